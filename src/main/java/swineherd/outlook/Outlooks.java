package swineherd.outlook;

import java.util.ArrayList;
import java.util.List;
import swineherd.setup.Setup;

/** Works out everything the rules may want to know of a setup. */
public final class Outlooks {
  private Outlooks() {}

  /**
   * All outlooks that the answers allow; what an unknown answer stands in the way of is left out.
   */
  public static List<Outlook> of(Setup setup) {
    List<Outlook> all = new ArrayList<>(Course.of(setup));
    List<Course> courses = Course.all(all);
    all.addAll(Alone.of(setup, courses));
    all.addAll(PenRoom.of(setup, courses));
    all.addAll(Mixing.of(setup, courses));
    all.addAll(ShelterFloor.of(setup, courses));
    List<Outlook> grass = Grass.of(setup, courses);
    all.addAll(grass);
    all.addAll(Paddocks.of(grass));
    all.addAll(Hillside.of(setup, courses));
    all.addAll(DungLoad.of(setup, courses, grass));
    all.addAll(WetMonths.of(setup, courses, grass));
    all.addAll(TreesThere.of(setup, grass));
    all.addAll(JustMoved.of(setup));
    all.addAll(NearWater.of(setup, courses));
    all.addAll(PlantsThere.of(setup, courses));
    all.addAll(ShadeRoom.of(setup, courses));
    all.addAll(StrongSun.of(setup, courses));
    all.addAll(TurnOut.of(setup, courses));
    all.addAll(SummerHeat.of(setup, courses));
    all.addAll(SunSigns.of(setup));
    all.addAll(Watched.of(setup, courses));
    all.addAll(TaintRisk.of(setup, courses));
    all.addAll(LateCastration.of(setup, courses));
    all.addAll(TaintVaccine.of(setup, courses));
    all.addAll(Litter.of(setup, courses));
    all.addAll(WaterNeed.of(setup, courses));
    all.addAll(WaterOut.of(setup, courses));
    all.addAll(WaterTested.of(setup));
    all.addAll(Fences.of(setup, courses));
    all.addAll(Treated.of(setup, courses));
    all.addAll(Died.of(setup));
    all.addAll(LastWeight.of(setup, courses));
    all.addAll(OnTheMove.of(setup));
    all.addAll(WormTest.of(setup, courses));
    all.addAll(WormGround.of(setup));
    all.addAll(WormArrival.of(setup));
    all.addAll(SkinCheck.of(setup, courses));
    all.addAll(Wintering.of(setup, courses));
    all.addAll(Newcomers.of(setup, courses));
    all.addAll(Arrival.of(setup, courses));
    all.addAll(RideHome.of(setup, courses));
    all.addAll(Offer.of(setup));
    all.addAll(Registration.of(setup));
    all.addAll(Keeping.of(setup));
    all.addAll(DailyLook.of(setup, courses));
    all.addAll(Vaccination.of(setup, courses));
    all.addAll(LeaveBarred.of(setup));
    all.addAll(Ration.of(setup, courses));
    all.addAll(ProteinNeed.of(setup, courses));
    all.addAll(LardFeed.of(setup, courses));
    all.addAll(FirstWeek.of(setup, courses));
    all.addAll(FeederRoom.of(setup, courses));
    all.addAll(FeedOrder.of(setup, courses));
    all.addAll(FeedLoad.of(setup, courses));
    all.addAll(FeedAhead.of(setup, courses));
    all.addAll(PastTarget.of(setup, courses));
    all.addAll(Purse.of(setup, courses));
    all.addAll(ScrapsLaw.of(setup, courses));
    all.addAll(Extras.of(setup, courses));
    all.addAll(HotHaul.of(setup, courses));
    all.addAll(OpenTruck.of(setup));
    all.addAll(Boar.of(setup, courses));
    all.addAll(LoadingRamp.of(setup, courses));
    all.addAll(ShelterNeed.of(setup, courses));
    all.addAll(HotHouse.of(setup, courses));
    all.addAll(HotHut.of(setup, all));
    all.addAll(TailCauses.of(setup, courses, all));
    all.addAll(HaulToSlaughter.of(setup, courses));
    all.addAll(SlaughterReadiness.of(setup, courses, all));
    all.addAll(NotFit.of(setup, all));
    all.addAll(HomeKill.of(setup));
    all.addAll(MeatYield.of(setup, courses));
    return List.copyOf(all);
  }
}
