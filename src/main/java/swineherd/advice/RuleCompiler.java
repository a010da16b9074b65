package swineherd.advice;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drools.compiler.kie.builder.impl.InternalKieModule;
import org.drools.drl.ast.descr.BaseDescr;
import org.drools.drl.ast.descr.ConditionalElementDescr;
import org.drools.drl.ast.descr.PackageDescr;
import org.drools.drl.ast.descr.PatternDescr;
import org.drools.drl.ast.descr.RuleDescr;
import org.drools.drl.parser.DrlParser;
import org.drools.drl.parser.DroolsParserException;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.builder.ReleaseId;
import org.kie.internal.builder.conf.LanguageLevelOption;
import swineherd.rulebook.Card;
import swineherd.rulebook.RuleInfo;
import swineherd.rulebook.Rulebook;
import swineherd.rulebook.RulebookCompiler;
import swineherd.rulebook.RulebookException;

/**
 * Compiles the DRL under {@code rules/} to Drools' executable model, in the build. A fault names
 * the file and the line of the rule it stands in.
 */
public final class RuleCompiler {
  /** All shipped rules live in packages that begin so. */
  static final String SHIPPED = "swineherd.rules.";

  /** All rules of keepers and advisers live in packages that begin so. */
  static final String OWN = "own.";

  private static final Pattern WORD =
      Pattern.compile("\"(?:[^\"\\\\]|\\\\.)*\"|[A-Za-z_$][\\w.$]*");
  private static final Pattern CARD = Pattern.compile("Advice\\.of\\(\\s*\"([^\"]+)\"");
  private static final Pattern FILLS = Pattern.compile("\\.with(?:Chance)?\\(\\s*\"([^\"]+)\"");

  static {
    // the newer grammar of Drools refuses more of what reads badly
    System.setProperty("drools.lang.level", "DRL10");
  }

  private final List<String> faults = new ArrayList<>();
  private final Map<Path, String> texts = new LinkedHashMap<>();
  private final Map<String, RuleInfo> rules = new TreeMap<>();
  private final String prefix;

  private RuleCompiler(String prefix) {
    this.prefix = prefix;
  }

  /**
   * @param args the folder of rules, and the folder of classes to write into
   */
  public static void main(String[] args) throws IOException {
    try {
      System.out.println(compile(Path.of(args[0]), Path.of(args[1])));
    } catch (RulebookException e) {
      e.faults().forEach(System.err::println);
      System.exit(1);
    }
  }

  /**
   * Compiles a folder of rules.
   *
   * @param rules the folder
   * @param classes the folder of classes to write into
   * @return a line that counts what was seen
   * @throws RulebookException with every fault found
   */
  static String compile(Path rules, Path classes) throws IOException {
    RuleCompiler compiler = new RuleCompiler(SHIPPED);
    compiler.parse(rules);
    Map<String, byte[]> model = compiler.build();
    for (Map.Entry<String, byte[]> file : model.entrySet()) {
      Path to = classes.resolve(file.getKey());
      Files.createDirectories(to.getParent());
      Files.write(to, file.getValue());
    }
    removeOld(classes, model.keySet());
    Path models = classes.resolve("rulebook/models.json");
    Files.createDirectories(models.getParent());
    new ObjectMapper().writeValue(models.toFile(), modelClasses(model));
    return RulebookCompiler.compile(rules, compiler.rules, classes);
  }

  /** Classes of rules as they were are named otherwise, and would pile up with every change. */
  private static void removeOld(Path classes, Set<String> fresh) throws IOException {
    Path ours = classes.resolve(SHIPPED.replace('.', '/'));
    if (!Files.isDirectory(ours)) {
      return;
    }
    try (Stream<Path> found = Files.walk(ours)) {
      for (Path file : found.filter(f -> f.toString().endsWith(".class")).toList()) {
        if (!fresh.contains(classes.relativize(file).toString().replace('\\', '/'))) {
          Files.delete(file);
        }
      }
    }
  }

  /**
   * Compiles a keeper's own folder of rules.
   *
   * @throws RulebookException with every fault found; among them an id or a package of ours
   */
  static OwnRules compileOwn(Path folder) throws IOException {
    RuleCompiler compiler = new RuleCompiler(OWN);
    compiler.parse(folder);
    if (compiler.rules.isEmpty()) {
      compiler.faults.add(folder + ": no rules there; a rule stands in TOPIC/TOPIC.drl");
    }
    for (RuleInfo rule : compiler.rules.values()) {
      if (Rulebook.rules().containsKey(rule.id())) {
        compiler.faults.add(
            rule.file()
                + ":"
                + rule.line()
                + ": rule \""
                + rule.id()
                + "\" has the name of a"
                + " shipped rule; give it another");
      }
    }
    compiler.throwFaults();
    Map<String, Card> cards = RulebookCompiler.own(folder, compiler.rules);
    InternalKieModule module = compiler.build(compiler.texts);
    if (module == null) {
      compiler.blame();
      compiler.throwFaults();
    }
    KieBase base = KieServices.get().newKieContainer(module.getReleaseId()).newKieBase(null);
    return new OwnRules(base, compiler.rules, cards);
  }

  /** What came of a keeper's own folder of rules. */
  record OwnRules(KieBase base, Map<String, RuleInfo> rules, Map<String, Card> cards) {}

  /** Reads every DRL file and what there is to know of its rules, and compiles nothing yet. */
  private void parse(Path folder) throws IOException {
    List<Path> files;
    try (Stream<Path> found = Files.walk(folder)) {
      files = found.filter(f -> f.toString().endsWith(".drl")).sorted().toList();
    }
    for (Path file : files) {
      String text = Files.readString(file);
      texts.put(file, text);
      PackageDescr parsed = parse(file, text);
      if (parsed == null) {
        continue;
      }
      String topic = file.getParent().getFileName().toString();
      if (!parsed.getName().equals(prefix + topic)) {
        faults.add(file + ":1: the package must be " + prefix + topic);
      }
      for (RuleDescr rule : parsed.getRules()) {
        RuleInfo info = info(file, topic, text, rule);
        RuleInfo twice = rules.putIfAbsent(info.id(), info);
        if (twice != null) {
          faults.add(
              file
                  + ":"
                  + info.line()
                  + ": rule \""
                  + info.id()
                  + "\" stands also in "
                  + twice.file()
                  + ":"
                  + twice.line());
        }
      }
    }
    throwFaults();
  }

  private PackageDescr parse(Path file, String text) {
    DrlParser parser = new DrlParser(LanguageLevelOption.DRL10);
    PackageDescr parsed = null;
    try {
      parsed = parser.parse(false, text);
    } catch (DroolsParserException e) {
      faults.add(file + ": " + e.getMessage());
    }
    parser
        .getErrors()
        .forEach(
            e ->
                faults.add(
                    file
                        + ":"
                        + e.getLines()[0]
                        + ": "
                        + e.getMessage().lines().findFirst().orElse("")));
    return parser.hasErrors() ? null : parsed;
  }

  private RuleInfo info(Path file, String topic, String text, RuleDescr rule) {
    String place = file + ":" + rule.getLine() + ": rule \"" + rule.getName() + "\": ";
    String then = String.valueOf(rule.getConsequence());
    if (!rule.getName().startsWith(topic + ".")) {
      faults.add(place + "its name must begin with \"" + topic + ".\"");
    }
    if (!rule.getAttributes().isEmpty()) {
      faults.add(place + "no salience, groups or loops: " + rule.getAttributes().keySet());
    }
    for (String statement : then.strip().split(";")) {
      if (!statement.isBlank() && !statement.strip().startsWith("insertLogical(")) {
        faults.add(
            place + "only insertLogical(...) may stand after then, not " + statement.strip());
      }
    }
    Matcher card = CARD.matcher(then);
    String cardId = null;
    while (card.find()) {
      cardId = card.group(1);
      if (!cardId.equals(rule.getName())) {
        faults.add(place + "its advice must have its name, not \"" + cardId + "\"");
      }
    }
    if (then.contains("new Advice(")) {
      faults.add(place + "advice is made with Advice.of(\"" + rule.getName() + "\", ...)");
    }
    Set<String> fills = new TreeSet<>();
    Matcher fill = FILLS.matcher(then);
    while (fill.find()) {
      fills.add(fill.group(1));
    }
    List<RuleInfo.Reads> reads = new ArrayList<>();
    reads(rule.getLhs(), reads);
    return new RuleInfo(
        rule.getName(),
        topic,
        file.toString(),
        rule.getLine(),
        cardId,
        fills,
        reads,
        when(text, rule));
  }

  private static void reads(BaseDescr descr, List<RuleInfo.Reads> reads) {
    if (descr instanceof PatternDescr pattern) {
      Set<String> words = new LinkedHashSet<>();
      for (BaseDescr constraint : pattern.getConstraint().getDescrs()) {
        Matcher word = WORD.matcher(constraint.toString());
        while (word.find()) {
          if (!word.group().startsWith("\"")) {
            words.add(word.group());
          }
        }
      }
      reads.add(new RuleInfo.Reads(pattern.getObjectType(), words));
    } else if (descr instanceof ConditionalElementDescr element) {
      for (Object inner : element.getDescrs()) {
        if (inner instanceof BaseDescr innerDescr) {
          reads(innerDescr, reads);
        }
      }
    }
  }

  /** The text between when and then, comments and all: it is written to be read. */
  private static String when(String text, RuleDescr rule) {
    int at = Math.max(0, text.indexOf("rule \"" + rule.getName() + "\""));
    int when = text.indexOf("when", at + rule.getName().length());
    int then = text.indexOf("\nthen", when);
    return when < 0 || then < 0 ? "" : text.substring(when + 4, then).stripIndent().strip();
  }

  private Map<String, byte[]> build() {
    InternalKieModule module = build(texts);
    if (module == null) {
      blame();
      throwFaults();
    }
    Map<String, byte[]> files = new TreeMap<>();
    for (String name : module.getFileNames()) {
      if (name.endsWith(".class")) {
        files.put(name, module.getBytes(name));
      }
    }
    return files;
  }

  /** Null if it does not compile; {@link #faults} then says why. */
  private InternalKieModule build(Map<Path, String> sources) {
    KieServices services = KieServices.get();
    KieFileSystem files = services.newKieFileSystem();
    ReleaseId id = services.newReleaseId("swineherd", "rules", "build-" + System.nanoTime());
    files.generateAndWritePomXML(id);
    sources.forEach(
        (file, text) ->
            files.write(
                "src/main/resources/"
                    + prefix.replace('.', '/')
                    + file.getParent().getFileName()
                    + "/"
                    + file.getFileName(),
                services
                    .getResources()
                    .newByteArrayResource(text.getBytes(StandardCharsets.UTF_8), "UTF-8")));
    KieBuilder builder = services.newKieBuilder(files);
    builder.buildAll(ExecutableModelProject.class);
    List<Message> errors = builder.getResults().getMessages(Message.Level.ERROR);
    if (!errors.isEmpty()) {
      errors.forEach(e -> faults.add(e.getPath() + ":" + e.getLine() + ": " + e.getText()));
      return null;
    }
    return (InternalKieModule) builder.getKieModule();
  }

  /**
   * Drools names generated classes for many faults, not the rule. Building one rule at a time finds
   * the guilty ones.
   */
  private void blame() {
    List<String> first = List.copyOf(faults);
    faults.clear();
    for (RuleInfo rule : rules.values()) {
      Path file =
          texts.keySet().stream()
              .filter(f -> f.toString().equals(rule.file()))
              .findFirst()
              .orElseThrow();
      List<String> before = List.copyOf(faults);
      if (build(Map.of(file, alone(texts.get(file), rule))) == null) {
        String why = faults.get(faults.size() - 1);
        faults.clear();
        faults.addAll(before);
        faults.add(rule.file() + ":" + rule.line() + ": rule \"" + rule.id() + "\": " + plain(why));
      }
    }
    if (faults.isEmpty()) {
      faults.addAll(first);
    }
  }

  /** Without the name of the generated file and its line, which nobody has seen. */
  private static String plain(String why) {
    return why.replaceFirst("^\\S+\\.(java|drl):-?\\d+: ", "").strip();
  }

  /** The file with only one of its rules, the lines kept in place. */
  private static String alone(String text, RuleInfo keep) {
    StringBuilder out = new StringBuilder();
    boolean inside = false;
    boolean kept = false;
    for (String line : text.split("\n", -1)) {
      if (line.startsWith("rule \"")) {
        inside = true;
        kept = line.startsWith("rule \"" + keep.id() + "\"");
      }
      out.append(!inside || kept ? line : "").append('\n');
      if (line.strip().equals("end")) {
        inside = false;
      }
    }
    return out.toString();
  }

  private static List<String> modelClasses(Map<String, byte[]> files) {
    return files.keySet().stream()
        .filter(f -> f.matches(".*/Rules[0-9A-F]{32}\\.class"))
        .map(f -> f.replace(".class", "").replace('/', '.'))
        .toList();
  }

  private void throwFaults() {
    if (!faults.isEmpty()) {
      throw new RulebookException(faults);
    }
  }
}
