/**
 * The core behind one asynchronous interface; what the page asks of it, it asks here.
 *
 * Every call is stateless. A refused call rejects with a `Refused` that carries the place and the remedy.
 * An abridged core gives the first answer; the whole is loaded after it, or when something else is asked.
 */
import type {
  AirRequest,
  Bet,
  Cause,
  CauseRequest,
  CheckRequest,
  Consistency,
  ConsistencyRequest,
  Hints,
  InStandardAir,
  Landing,
  LandingRequest,
  Luck,
  LuckRequest,
  Measure,
  Order,
  Potential,
  PotentialRequest,
  Question,
  ReadResult,
  Report,
  Second,
  SecondRequest,
  Session,
  Shared,
  ShareRequest,
  Typical,
  Unpacked,
} from "../../pkg/straight_answer.js";
import { openCores } from "./core.js";
import { asking } from "./refusal.js";

export type {
  Answer,
  Ask,
  Bet,
  Build,
  CheckRequest,
  ColumnReading,
  Conditions,
  CustomMeasure,
  Decision,
  Delimiter,
  Differs,
  Estimate,
  Finding,
  Form,
  Goal,
  Group,
  Hints,
  Layout,
  LineIs,
  LineReading,
  LinkNotice,
  Luck,
  LuckRequest,
  Measure,
  Notice,
  Numbers,
  Order,
  Overlay,
  Problem,
  Question,
  Reading,
  ReadingDoubt,
  ReadResult,
  Refusal,
  Report,
  Role,
  RowCounts,
  Session,
  Shared,
  ShareRequest,
  Shot,
  Showing,
  Stopping,
  StoppingWord,
  TextbookTest,
  TrustFinding,
  Typical,
  Unpacked,
  View,
  Way,
} from "../../pkg/straight_answer.js";

/** What the page asks of the core; a worker answers to the same interface (see `remote.ts`). */
/** Whose shots are spoken of. */
export type Whose = "own" | "sender";

export interface Engine {
  /** The measures of the trade, with their usual smallest difference that matters. */
  measures(): Promise<Measure[]>;
  /** The text of a file; nothing when it is a workbook, and refused when it is neither. */
  decode(bytes: Uint8Array, name: string): Promise<string | undefined>;
  /** Reads shots from text; never refuses text, only hints of the wrong type. */
  read(text: string, hints: Hints): Promise<ReadResult>;
  /** Joins sessions of texts given one after another; `order` is how the clubs were hit, when that is known. */
  join(sessions: readonly Session[], order: Order | null): Promise<Session>;
  /** Loads the whole core, which what is asked after an answer may take: it comes while the answer is read. */
  loadTheRest(): Promise<void>;
  /** Answers a question from a session's shots. */
  check(request: CheckRequest, whose?: Whose): Promise<Report>;
  /** What to bet, where a verdict is out of reach or says too much. */
  bet(request: CheckRequest): Promise<Bet>;
  /** The typical shot, beside the average. */
  typical(request: CheckRequest): Promise<Typical>;
  /** Shows how far luck reaches on a session's own shots. */
  luck(request: LuckRequest): Promise<Luck>;
  /** What a link holds; anything else is refused. */
  unpack(link: string): Promise<Unpacked>;
  /** The shots that a link still holds that was cut off; nothing of one that is changed, or none. */
  leftOfLink(link: string): Promise<Session | undefined>;
  /** The answer made ready to give away: link, words, lines of a card, the report as a file. */
  share(request: ShareRequest): Promise<Shared>;
  /** The session as the tool's own CSV, with what was asked of it; reads back identical. */
  writeCsv(session: Session, question?: Question): Promise<string>;
  /** Where the shots land and how often they would hit a fairway. */
  landing(request: LandingRequest): Promise<Landing>;
  /** A gap in carry by where it comes from. */
  cause(request: CauseRequest): Promise<Cause>;
  /** What the ball speeds could carry. */
  potential(request: PotentialRequest): Promise<Potential>;
  /** Whether carries and launches belong together. */
  consistency(request: ConsistencyRequest): Promise<Consistency>;
  /** A build beside a second thing that changed. */
  second(request: SecondRequest): Promise<Second>;
  /** Carries brought to standard air. */
  inStandardAir(request: AirRequest): Promise<InStandardAir>;
}

/** The core on this thread, to answer in a manner. */
export async function openLocal(manner: string, abridged: WebAssembly.Module): Promise<Engine> {
  const { soon, later } = await openCores(manner, abridged);
  return {
    measures: () => asking(() => soon((core, voice) => core.measures(voice))),
    decode: (bytes, name) => asking(() => soon((core, voice) => core.decode(bytes, name, voice))),
    read: (text, hints) => asking(() => soon((core, voice) => core.read_in_columns(text, hints, voice))),
    join: (sessions, order) => asking(() => later((core, voice) => core.join([...sessions], order, voice))),
    check: (request, whose = "own") =>
      asking(() => soon((core, voice) => core.check(request, whose === "own" ? voice : { ...voice, whose }))),
    loadTheRest: () => asking(() => later(() => undefined)),
    bet: (request) => asking(() => later((core, voice) => core.bet(request, voice))),
    typical: (request) => asking(() => later((core, voice) => core.typical(request, voice))),
    luck: (request) => asking(() => later((core, voice) => core.luck(request, voice))),
    unpack: (link) => asking(() => soon((core, voice) => core.unpack(link, voice))),
    leftOfLink: (link) => asking(() => later((core, voice) => core.left_of_link(link, voice))),
    share: (request) => asking(() => later((core, voice) => core.share(request, voice))),
    writeCsv: (session, question) => asking(() => later((core, voice) => core.write_csv(session, voice, question))),
    landing: (request) => asking(() => later((core, voice) => core.landing(request, voice))),
    cause: (request) => asking(() => later((core, voice) => core.cause(request, voice))),
    potential: (request) => asking(() => later((core, voice) => core.potential(request, voice))),
    consistency: (request) => asking(() => later((core, voice) => core.consistency(request, voice))),
    second: (request) => asking(() => later((core, voice) => core.second(request, voice))),
    inStandardAir: (request) => asking(() => later((core, voice) => core.in_standard_air(request, voice))),
  };
}
