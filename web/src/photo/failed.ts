/** Why a photo was not taken, in words, with what to do instead. */
import type { Refusal } from "../core/engine.js";
import type { Photographed } from "../core/photo.js";
import { say } from "../text/say.js";

type Failure = Extract<Photographed, { failure: unknown }>["failure"];

/** A photo that was not taken. */
export interface Failed {
  name: string;
  failure: Failure;
}

export const refusalOf = ({ name, failure }: Failed): Refusal => ({
  kind: failure,
  place: name,
  message: say(`photo-failed-${failure}`),
  remedy: say(`photo-remedy-${REMEDIES[failure]}`),
});

/** What helps. */
const REMEDIES: Record<Failure, "share" | "again" | "nearer" | "connection" | "type"> = {
  heic: "share",
  no_photo: "share",
  animated: "share",
  damaged: "share",
  too_small: "nearer",
  too_large: "share",
  no_picture: "share",
  no_text: "nearer",
  no_table: "nearer",
  too_much: "nearer",
  too_poor: "again",
  not_loaded: "connection",
  failed: "type",
  old_browser: "type",
};
