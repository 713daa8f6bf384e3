/**
 * What rests on the flight model, behind one asynchronous interface: a package and a worker of their own, both loaded
 * when the first part that needs them is opened. The worker keeps the page awake: a split takes a phone a moment.
 */
import { startWorker } from "./trusted.js";
import address from "./flights-worker.ts?worker&url";
import type {
  AirRequest,
  Cause,
  CauseRequest,
  Consistency,
  ConsistencyRequest,
  InStandardAir,
  Landing,
  LandingRequest,
  Potential,
  PotentialRequest,
  Second,
  SecondRequest,
} from "../../pkg/straight_answer_flight.js";
import { caller } from "./port.js";

export type {
  Belongs,
  BuildLanding,
  CarryMap,
  Cause,
  Consistency,
  Conditions,
  Hand,
  InStandardAir,
  Landing,
  Part,
  Potential,
  Second,
  SecondFactor,
  Effect,
  SpeedGroup,
} from "../../pkg/straight_answer_flight.js";

/** What the parts ask of the second package. */
export interface Flights {
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

let opened: Flights | null = null;

/** The one worker of all parts, started when first asked for. */
export function flights(): Flights {
  opened ??= open();
  return opened;
}

function open(): Flights {
  const call = caller(startWorker(address));
  return {
    landing: (request) => call("landing", request),
    cause: (request) => call("cause", request),
    potential: (request) => call("potential", request),
    consistency: (request) => call("consistency", request),
    second: (request) => call("second", request),
    inStandardAir: (request) => call("inStandardAir", request),
  };
}
