/**
 * The coach's hour behind one asynchronous interface: plan, follow, claim, together, feel; a package of its own.
 *
 * Loaded when a part that needs it is opened. Every call is stateless; a refused one rejects with a `Refused`.
 */
import init, * as core from "../../pkg/straight_answer_plan.js";
import { language } from "../text/say.js";
import { manner } from "../text/units.js";
import { loadedIn } from "./core-language.js";
import { carried, Refused } from "./refusal.js";

export type {
  Claimed,
  ClaimReport,
  ClaimRequest,
  Feel,
  FeelRequest,
  FollowRequest,
  Length,
  LoggedShot,
  LookAfter,
  LookTaken,
  LookWord,
  OwnSay,
  Plan,
  PlanRequest,
  Progress,
  SharedPlan,
  TogetherPair,
  TogetherRequest,
} from "../../pkg/straight_answer_plan.js";

/** Functions of the package, by what the page calls them. */
const FUNCTIONS = {
  plan: core.plan,
  follow: core.follow,
  claim: core.claim,
  together: core.together,
  beside: core.beside,
  /** A plan as a text for the fragment of an address. */
  packPlan: core.pack_plan,
  /** What such a text, or a whole address with it, holds. */
  unpackPlan: core.unpack_plan,
  /** A session as the tool's own CSV. */
  writeCsv: core.write_csv,
};

export type Planner = typeof FUNCTIONS;

let opened: Promise<Planner> | undefined;

/** Loads the package once; after a failure the next call tries again. */
export function openPlanner(): Promise<Planner> {
  opened ??= load().catch((failed: unknown) => {
    opened = undefined;
    throw failed;
  });
  return opened;
}

async function load(): Promise<Planner> {
  await loadedIn(
    manner(language()),
    core,
    init({ module_or_path: new URL("../../pkg/straight_answer_plan_bg.wasm", import.meta.url) }),
  );
  const asked = Object.entries(FUNCTIONS).map(([name, call]) => [name, asking(call as (request: unknown) => unknown)]);
  return Object.fromEntries(asked) as Planner;
}

/** The same function; what it throws is a `Refused`. */
const asking = (call: (request: unknown) => unknown) => (request: unknown) => {
  try {
    return call(request);
  } catch (thrown) {
    throw new Refused(carried(thrown));
  }
};
