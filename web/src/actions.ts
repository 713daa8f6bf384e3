/** What a view may ask the page to do. Views call these and send nothing else. */
import type { Hints, Luck, LuckRequest } from "./engine.js";
import type { Example } from "./examples.js";
import type { QuestionPatch } from "./state.js";

export interface Actions {
  /** Whether the browser can hand over the clipboard when asked. */
  readonly canPaste: boolean;
  pasteFromClipboard: () => void;
  giveText: (text: string) => void;
  giveFile: (file: File) => void;
  openExample: (example: Example) => void;
  hint: (hints: Hints) => void;
  ask: (patch: QuestionPatch) => void;
  /** Sets a shot aside for a reason, or puts it back (null). */
  leaveOut: (shot: number, reason: string | null) => void;
  showMoreShots: () => void;
  startAgain: () => void;
  /** Asks the core directly: what it shows belongs to its own part and changes nothing else on the page. */
  luck: (request: LuckRequest) => Promise<Luck>;
}
