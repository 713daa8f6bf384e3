/**
 * The coach's hour behind one interface: plan, follow, claim, together, feel, fitting; answered at once, on the page's own thread.
 *
 * The same core that the worker has, started here too when a part that needs it is opened.
 * Every call is stateless; a refused one throws a `Refused`.
 */

import type {
  ClaimReport,
  ClaimRequest,
  Feel,
  FeelRequest,
  FittingReport,
  FittingSeen,
  FollowRequest,
  Plan,
  PlanLimits,
  PlanRequest,
  PlanToShare,
  Progress,
  Question,
  Session,
  SharedPlan,
  TogetherPair,
  TogetherRequest,
} from "../../pkg/straight_answer.js";
import { numberTag } from "../text/say.js";
import { manner } from "../text/units.js";
import { openWhole } from "./core.js";
import { voiceOf } from "./core-language.js";
import { carried, Refused } from "./refusal.js";

export type {
  Claimed,
  ClaimReport,
  ClaimRequest,
  Feel,
  FeelRequest,
  FittingReport,
  FittingSeen,
  FollowRequest,
  Length,
  LoggedShot,
  LookAfter,
  LookTaken,
  LookWord,
  OwnSay,
  Plan,
  PlanLimits,
  PlanRequest,
  Progress,
  SharedPlan,
  TogetherPair,
  TogetherRequest,
} from "../../pkg/straight_answer.js";

export interface Planner {
  plan(request: PlanRequest): Plan;
  follow(request: FollowRequest): Progress;
  claim(request: ClaimRequest): ClaimReport;
  together(request: TogetherRequest): TogetherPair[];
  feel(request: FeelRequest): Feel;
  /** What a fitting can show by how it was done; null where nothing is said of it. */
  fitting(seen: FittingSeen): FittingReport | null;
  /** A plan as a text for the fragment of an address. */
  packPlan(request: PlanToShare): string;
  /** What such a text, or a whole address with it, holds. */
  unpackPlan(text: string): SharedPlan;
  /** A session as the tool's own CSV, with what was asked of it. */
  writeCsv(session: Session, question?: Question): string;
  /** Within what a plan can be made, and what is usual. */
  limits(): PlanLimits;
}

let opened: Promise<Planner> | undefined;

/** Starts the core once; after a failure the next call tries again. */
export function openPlanner(): Promise<Planner> {
  opened ??= load().catch((failed: unknown) => {
    opened = undefined;
    throw failed;
  });
  return opened;
}

async function load(): Promise<Planner> {
  const [core, voice] = await Promise.all([openWhole(), voiceOf(manner(numberTag()))]);
  const limits = asking(core.plan_limits);
  return {
    plan: (request) => asking(() => core.plan(request, voice)),
    follow: (request) => asking(() => core.follow(request, voice)),
    claim: (request) => asking(() => core.claim(request, voice)),
    together: (request) => asking(() => core.together(request, voice)),
    feel: (request) => asking(() => core.feel(request, voice)),
    fitting: (seen) => asking(() => core.fitting(seen, voice)),
    packPlan: (request) => asking(() => core.pack_plan(request, voice)),
    unpackPlan: (text) => asking(() => core.unpack_plan(text, voice)),
    limits: () => limits,
    writeCsv: (session, question) => asking(() => core.write_csv(session, voice, question)),
  };
}

function asking<T>(call: () => T): T {
  try {
    return call();
  } catch (thrown) {
    throw new Refused(carried(thrown));
  }
}
