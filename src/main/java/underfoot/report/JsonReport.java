package underfoot.report;

import static java.util.Map.entry;

import java.io.Writer;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tools.jackson.core.JsonGenerator;
import underfoot.buildup.Verdict;
import underfoot.knowledge.Figure;
import underfoot.lesson.Lesson;
import underfoot.lesson.Question;
import underfoot.lesson.Results;
import underfoot.plan.Advice;
import underfoot.plan.Advice.RemedyNote;
import underfoot.plan.ChangeNote;
import underfoot.plan.ComparedBuildUp;
import underfoot.plan.Consequences;
import underfoot.plan.Cost;
import underfoot.plan.FindOut;
import underfoot.plan.FirstThings;
import underfoot.plan.FloorsCompared;
import underfoot.plan.Justification;
import underfoot.plan.LayerFound;
import underfoot.plan.Opinion;
import underfoot.plan.Premise;
import underfoot.plan.ProgrammeStep;
import underfoot.plan.Refusal;
import underfoot.plan.RoomZone;
import underfoot.plan.SetOut;
import underfoot.plan.ShoppingLine;
import underfoot.plan.setout.BoardPlan;
import underfoot.plan.setout.TileSetOut;
import underfoot.reasoning.RulesCompared;
import underfoot.reasoning.WhatIf.Otherwise;

/**
 * The answers as JSON, each with the name and version of its format. Fields may be added to a
 * format, but none changes its meaning. Within the reasons of one decision a chain that comes again
 * is told once in full; where it comes again it stands without what it rests on and is marked
 * {@code "told":true}.
 */
public final class JsonReport extends RecordWriter {
  /** The format of a line about a scenario that could not be used. */
  public static final String FAILURE = "underfoot.failure/1";

  private static final double MILLIONTHS = 1e6;
  private static final double HUNDREDTHS = 100;

  private static final Map<Class<?>, String> PROPERTIES =
      Map.ofEntries(
          entry(Document.class, "format origin= tool? of="),
          entry(Origin.class, "file sha256 supersedes?"),
          entry(MadeBy.class, "version ruleBase notice?"),
          entry(
              Advice.class,
              "scenario practice first= verdict summary base way=buildUp stopFindings=halts layers"
                  + " coverage remedies cautions assumptions alternatives heights massKgPerM2"
                  + " consequences= ranking findOutFirst asFound? zones?"),
          entry(LayerFound.class, "name thicknessMm stays because"),
          entry(
              RoomZone.class,
              "name areaM2 surfaceMm levelMm stepMm advice/verdict=verdict advice/base=base"
                  + " advice/way=buildUp advice/layers=layers advice/stopFindings=halts"
                  + " advice/remedies=remedies advice/cautions=cautions advice/heights=heights"
                  + " advice/massKgPerM2=massKgPerM2 advice/assumptions=assumptions"
                  + " advice/alternatives=alternatives advice/asFound=asFound?"),
          entry(
              Consequences.class,
              "quantities shopping programme schedule ways changes=leastChanges changesNote=leastChangesNote? cost levels? setOut?"),
          entry(FirstThings.class, "headline headlineOf doNow alsoFirst"),
          entry(FirstThings.DoNow.class, "id kind text"),
          entry(Advice.HaltNote.class, "id verdict title text because"),
          entry(
              Advice.Layer.class,
              "id order name material family thickness=thicknessMm level=levelMm spec/text=spec"
                  + " fixingText=fixing coveragePercent? key because"),
          entry(Advice.Coverage.class, "targetPercent check/text=check because"),
          entry(RemedyNote.class, "id hold title text about? because"),
          entry(
              Advice.CautionNote.class,
              "id severity title text parts/parts= about? general because"),
          entry(Advice.Assumption.class, "fact assumed look=findOut wouldChange changes because"),
          entry(Otherwise.class, "fact value reach differences=becomes"),
          entry(Advice.Alternative.class, "id standing kind title text because"),
          entry(Advice.Heights.class, "rise=riseMm aboveOldFloor=aboveOldFloorMm doors"),
          entry(Advice.Ranking.class, "id order name=criterion because"),
          entry(
              ShoppingLine.class,
              "shelf item kind? size? amount unit packs pack=packHolds pieces=packPieces forWhat? spare?"),
          entry(Cost.class, "total contingency atLeast unpriced currency invented lines"),
          entry(FindOut.class, "fact ask look pass=stage rank decisions"),
          entry(
              ProgrammeStep.class,
              "id step startHour hours endHour kind begins? ends? critical after because"),
          entry(underfoot.plan.Milestone.class, "what step hour on?"),
          entry(ChangeNote.class, "text with verdict stillFirst numbers=way"),
          entry(
              ComparedBuildUp.class,
              "id title standing layers aboveOldFloor=aboveOldFloorMm doors massKgPerM2 joistRatio"
                  + " deckRatio cost workHours inUseAfterHours inUse? disturbance first risks"
                  + " against gains givesUp because/rule/id=rules"),
          entry(ComparedBuildUp.Part.class, "id name thickness=thicknessMm"),
          entry(Figure.class, "name=figure value unit"),
          entry(SetOut.class, "tiles whyNoTiles? boards"),
          entry(
              SetOut.Tiles.class,
              "layout/kind/words=pattern layout/length=lengthMm layout/width=widthMm"
                  + " layout/joint=jointMm layout/gap=edgeGapMm layout/direction=directionDegrees"
                  + " layout/whole layout/cut layout/tiles breakagePercent toOrder layout/start"
                  + " layout/walls layout/movement=movementJoints layout/compared"
                  + " layout/tried=startsTried layout/every=noneBetter because"),
          entry(TileSetOut.Start.class, "x=xMm y=yMm reaches=toWalls"),
          entry(TileSetOut.Reach.class, "wall distance=mm"),
          entry(TileSetOut.WallCuts.class, "wall sizes=cuts"),
          entry(TileSetOut.Size.class, "mm count=pieces"),
          entry(TileSetOut.Strip.class, "x1=x1Mm y1=y1Mm x2=x2Mm y2=y2Mm width=widthMm"),
          entry(
              TileSetOut.Compared.class,
              "option/way=start option/door? chosen option/turned=lengthAcrossRoom option/whole"
                  + " option/cut option/tiles option/narrow option/slivers option/least=leastCutMm"
                  + " option/offCentre option/points"),
          entry(
              SetOut.Boards.class,
              "layer plan/length=lengthMm plan/width=widthMm plan/joint=jointMm plan/gap=wallGapMm"
                  + " plan/axis=along plan/boards plan/screws/size=screws deckKnown=deckJointsKnown"
                  + " firstJointMeasured plan/offDeck=offDeckJointsMm plan/stagger=staggerMm"
                  + " plan/atDoors=jointsInDoorways plan/cuts=cutList plan/pieces because"),
          entry(BoardPlan.Cut.class, "mark length=lengthMm width=widthMm count=pieces notched"),
          entry(BoardPlan.Piece.class, "row mark x1=x1Mm y1=y1Mm x2=x2Mm y2=y2Mm"),
          entry(FloorsCompared.class, "first=a second=b facts decisions every=eachTried"),
          entry(FloorsCompared.Differing.class, "fact first=a second=b"),
          entry(FloorsCompared.Decided.class, "what=decision becauseOf"),
          entry(
              Refusal.class,
              "scenario asked=material standing text reasons failed changes=smallestChanges"
                  + " askedFor=askedForBy way"),
          entry(Refusal.Failed.class, "fact value from"),
          entry(Refusal.Opening.class, "text with way=then"));

  private static final Map<Class<?>, String> OF_OPINIONS =
      besides(
          Map.of(
              Opinion.class,
              "scenario proposal faults verdict=floorVerdict way=buildUp"
                  + " isRecommended=recommendedWay layers findings remedies=putRightFirst dangers heights"
                  + " massKgPerM2 stiffness",
              Opinion.Layer.class,
              "order label=layer kind part=id asked judgement thickness=thicknessMm"
                  + " said=thicknessSaid",
              Opinion.Item.class,
              "id judgement judgement/isFault=fault layer text consequence remedy because",
              Opinion.Stiffness.class,
              "name=measure value",
              RemedyNote.class,
              "id hold text because",
              Advice.CautionNote.class,
              "id title text because"));

  private static final Map<Class<?>, String> OF_A_CLASS =
      Map.of(
          Question.class,
          "kind topic level aim given? ask options? reply right? number within? unit? slips?"
              + " answer worked?",
          Question.Option.class,
          "label text shows?");

  private static final Map<Class<?>, String> OF_LESSONS =
      besides(
          Map.of(
              Lesson.class,
              "scenario/name=scenario seed marks changes floor assumed questions",
              Question.class,
              "kind topic level=marks aim given ask reply options right amount= slips answer"
                  + " worked cites=because figures",
              Question.Cite.class,
              "rule reason source status=sourceStatus",
              Figure.class,
              "name=figure text=value"));

  private final Set<Object> told = Collections.newSetFromMap(new IdentityHashMap<>());

  private record Document(String format, Optional<Origin> origin, MadeBy tool, Object of) {}

  /**
   * Which scenario a line of many answers.
   *
   * @param file the name of the file as it was given, or of the line of standard input
   * @param sha256 the digest of its content, in hexadecimal; empty if it could not be read
   * @param supersedes the digest of the content that an earlier line of the same file answered and
   *     that this line is in the place of; empty if there is none
   */
  public record Origin(String file, String sha256, String supersedes) {}

  private record Ways(String scenario, Verdict verdict, List<ComparedBuildUp> ways) {}

  private record Why(String scenario, List<Reasons> decisions, List<Justification> rule) {}

  private record Reasons(String id, String heading, List<Justification> because) {}

  private record Failure(int exit, List<String> faults) {}

  private JsonReport(JsonGenerator json, double parts, Map<Class<?>, String> properties) {
    super(json, parts, properties);
  }

  private static Map<Class<?>, String> besides(Map<Class<?>, String> more) {
    Map<Class<?>, String> all = new HashMap<>(PROPERTIES);
    all.putAll(more);
    return all;
  }

  private static void write(
      Document document, boolean indented, Map<Class<?>, String> properties, Writer out) {
    double parts = properties == OF_LESSONS ? AS_THEY_ARE : MILLIONTHS;
    try (JsonGenerator json = generator(out, indented)) {
      new JsonReport(json, parts, properties).value(document);
    }
  }

  private static void write(String format, Object of, Writer out) {
    write(new Document(format, Optional.empty(), null, of), true, PROPERTIES, out);
  }

  /**
   * Writes advice, format {@code underfoot.advice/1}.
   *
   * @param advice the advice
   * @param tool what made it
   * @param out where it is written; left open
   */
  public static void write(Advice advice, MadeBy tool, Writer out) {
    write(
        new Document("underfoot.advice/1", Optional.empty(), tool, advice), true, PROPERTIES, out);
  }

  /**
   * Writes advice that is one of many as one line without its line feed: as it is by itself, and
   * the file.
   *
   * @param origin which scenario it is about
   * @param advice the advice
   * @param tool what made it
   * @param out where it is written; left open
   */
  public static void line(Origin origin, Advice advice, MadeBy tool, Writer out) {
    write(
        new Document("underfoot.advice/1", Optional.of(origin), tool, advice),
        false,
        PROPERTIES,
        out);
  }

  /**
   * Writes that a scenario could not be used as one line without its line feed, format {@code
   * underfoot.failure/1}.
   *
   * @param origin which scenario it is about
   * @param exit the exit code that {@code advise} would end with
   * @param faults what is wrong with it, with places and how to put it right
   * @param out where it is written; left open
   */
  public static void failure(Origin origin, int exit, List<String> faults, Writer out) {
    Failure failure = new Failure(exit, faults);
    write(new Document(FAILURE, Optional.of(origin), null, failure), false, PROPERTIES, out);
  }

  /** Writes what is said of a proposal, format {@code underfoot.check/1}; see the advice. */
  public static void write(Opinion opinion, MadeBy tool, Writer out) {
    write(
        new Document("underfoot.check/1", Optional.empty(), tool, opinion), true, OF_OPINIONS, out);
  }

  /**
   * Writes why decisions were made, format {@code underfoot.why/1}.
   *
   * @param scenario the scenario's name
   * @param decisions the decisions
   * @param rule where the rule asked for decided; none if a decision was asked for
   * @param out where it is written; left open
   */
  public static void why(
      String scenario,
      List<? extends Advice.Decision> decisions,
      List<Justification> rule,
      Writer out) {
    List<Reasons> reasons =
        decisions.stream().map(one -> new Reasons(one.id(), one.heading(), one.because())).toList();
    write("underfoot.why/1", new Why(scenario, reasons, rule), out);
  }

  /** Writes two floors compared, format {@code underfoot.compare/1}. */
  public static void write(FloorsCompared compared, Writer out) {
    write("underfoot.compare/1", compared, out);
  }

  /** Writes the ways for one floor, the recommended one first, format as of two floors. */
  public static void ways(Advice advice, Writer out) {
    List<ComparedBuildUp> ways = CompareReport.ranked(advice);
    write("underfoot.compare/1", new Ways(advice.scenario(), advice.verdict(), ways), out);
  }

  /** Writes why a material is not what is recommended, format {@code underfoot.why-not/1}. */
  public static void write(Refusal refusal, Writer out) {
    write("underfoot.why-not/1", refusal, out);
  }

  /** Writes a lesson with its answers, format {@code underfoot.lesson/1}. */
  public static void write(Lesson lesson, Writer out) {
    write(
        new Document("underfoot.lesson/1", Optional.empty(), null, lesson), true, OF_LESSONS, out);
  }

  /** Writes two rule bases compared, format {@code underfoot.compare-rules/1}. */
  public static void write(RulesCompared compared, Writer out) {
    write("underfoot.compare-rules/1", compared, out);
  }

  /** Writes what a class knows, format {@code underfoot.results/1}. */
  public static void write(Results results, Writer out) {
    write("underfoot.results/1", results, out);
  }

  /** Writes a line of a class; see {@code ClassBook}. */
  public static void line(Object line, Writer out) {
    write(line, false, OF_A_CLASS, out);
  }

  @Override
  void property(String name, Object value) {
    if (name.equals("because")) {
      told.clear();
    }
    super.property(name, value);
  }

  @Override
  void value(Object value) {
    if (value instanceof SetOut) {
      rounded(HUNDREDTHS, () -> super.value(value));
    } else if (value instanceof Justification one) {
      rounded(MILLIONTHS, () -> object(Map.of(), () -> justification(one)));
    } else if (value instanceof Premise one) {
      object(Map.of(), () -> premise(one));
    } else {
      super.value(value);
    }
  }

  // Most of an advice is these two: Java spins a class for each method called by reflection often.

  private void justification(Justification one) {
    boolean again = !told.add(one) && !one.restsOn().isEmpty();
    property("rule", one.rule().id());
    property("reason", one.rule().reason());
    property("source", one.source().title());
    property("sourceStatus", one.source().status());
    property("facts", one.facts());
    property("figures", one.figures());
    if (again) {
      property("told", true);
    }
    property("rests-on", again ? List.of() : one.restsOn());
  }

  private void premise(Premise one) {
    property("fact", one.fact());
    property("value", one.value());
    property("from", one.from().word());
    if (one.line() > 0) {
      property("line", one.line());
    }
    if (!one.how().isEmpty()) {
      property("how", one.how());
    }
    if (!one.uses().isEmpty() && told.add(one)) {
      property("uses", one.uses());
    }
  }
}
