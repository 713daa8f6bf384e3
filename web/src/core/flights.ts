/**
 * What rests on the flight model, behind one asynchronous interface: a package and a worker of their own, both loaded
 * when the first part that needs them is opened. The worker keeps the page awake: a split takes a phone a moment.
 */

import address from "./flights-worker.ts?worker&url";
import { type Remote, remote } from "./port.js";
import { startWorker } from "./trusted.js";

export type {
  Belongs,
  BuildLanding,
  CarryMap,
  Cause,
  Conditions,
  Consistency,
  Effect,
  Hand,
  InStandardAir,
  Landing,
  Part,
  Potential,
  Second,
  SecondFactor,
  SpeedGroup,
} from "../../pkg/straight_answer_flight.js";

/** Functions of the package, by their names there. */
type Asked = "landing" | "cause" | "potential" | "consistency" | "second" | "inStandardAir";

/** What the parts ask of it. */
export type Flights = Remote<Pick<typeof import("../../pkg/straight_answer_flight.js"), Asked>>;

let opened: Flights | null = null;

/** The one worker of all parts, started when first asked for. */
export function flights(): Flights {
  opened ??= remote(startWorker(address));
  return opened;
}
