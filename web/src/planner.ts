/**
 * The coach's hour behind one interface: plan, follow, claim, together, feel; answered at once, on the page's own thread.
 *
 * The same core that the worker has, started here too when a part that needs it is opened.
 * Every call is stateless; a refused one throws a `Refused`.
 */
import { openWhole } from "./core.js";
import type {
  ClaimReport, ClaimRequest, Feel, FeelRequest, FollowRequest, Plan, PlanRequest, PlanToShare, Progress, Session, SharedPlan, TogetherPair,
  TogetherRequest,
} from "../pkg/straight_answer.js";
import { Refused, carried } from "./refusal.js";
import { language } from "./text/say.js";
import { manner } from "./units.js";

export type {
  Claimed, ClaimReport, ClaimRequest, Feel, FeelRequest, FollowRequest, Length, LoggedShot, LookAfter, LookTaken, LookWord, OwnSay, Plan,
  PlanRequest, Progress, SharedPlan, TogetherPair, TogetherRequest,
} from "../pkg/straight_answer.js";

export interface Planner {
  plan(request: PlanRequest): Plan;
  follow(request: FollowRequest): Progress;
  claim(request: ClaimRequest): ClaimReport;
  together(request: TogetherRequest): TogetherPair[];
  feel(request: FeelRequest): Feel;
  /** A plan as a text for the fragment of an address. */
  packPlan(request: PlanToShare): string;
  /** What such a text, or a whole address with it, holds. */
  unpackPlan(text: string): SharedPlan;
  /** A session as the tool's own CSV. */
  writeCsv(session: Session): string;
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
  const core = await openWhole(manner(language()));
  return {
    plan: (request) => asking(() => core.plan(request)),
    follow: (request) => asking(() => core.follow(request)),
    claim: (request) => asking(() => core.claim(request)),
    together: (request) => asking(() => core.together(request)),
    feel: (request) => asking(() => core.feel(request)),
    packPlan: (request) => asking(() => core.pack_plan(request)),
    unpackPlan: (text) => asking(() => core.unpack_plan(text)),
    writeCsv: (session) => asking(() => core.write_csv(session)),
  };
}

function asking<T>(call: () => T): T {
  try {
    return call();
  } catch (thrown) {
    throw new Refused(carried(thrown));
  }
}
