/** What rests on the flight model, for the parts that show it: asked of the page's one engine. */
import type { Engine } from "./engine.js";
import { engineOfPage } from "./remote.js";

export type {
  Belongs,
  BuildLanding,
  CarryMap,
  Cause,
  Conditions,
  Consistency,
  Effect,
  Gain,
  Hand,
  InStandardAir,
  Landing,
  Part,
  Potential,
  Second,
  SecondFactor,
  SpeedGroup,
} from "../../pkg/straight_answer.js";

/** What the parts ask of the core. */
export type Flights = Pick<Engine, "landing" | "cause" | "potential" | "consistency" | "second" | "inStandardAir">;

/** The engine, perhaps still on its way. */
export const flights = (): Promise<Flights> => engineOfPage();
