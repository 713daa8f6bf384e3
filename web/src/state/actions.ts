/** What a view may ask the page to do. Views call these and send nothing else. */
import type {
  CheckRequest,
  Conditions,
  Hints,
  Luck,
  LuckRequest,
  Question,
  ReadResult,
  Report,
  Session,
  Shared,
  ShareRequest,
} from "../core/engine.js";
import type { Example } from "./examples.js";
import type { Patch } from "./patch.js";
import type { Entry } from "./state.js";
import type { NewText } from "./texts.js";

export interface Actions {
  /** Whether the browser can hand over the clipboard when asked. */
  readonly canPaste: boolean;
  /** Takes in text or files: in the place of what is there, or `adding` to it. */
  pasteFromClipboard: (adding?: boolean) => void;
  giveText: (text: string, adding?: boolean) => void;
  giveFiles: (files: readonly File[], adding?: boolean) => void;
  openExample: (example: Example) => void;
  /** Opens the grid, the form or the list of sheets in the place of the shots; null closes it. */
  enter: (entry: Entry | null) => void;
  /** Leaves the grid or the form without reading it; what was typed waits for the next time. */
  leave: (draft: unknown) => void;
  /** What was entered, as a text: in the place of the text at `at`, or as one more. */
  entered: (text: NewText, at: number | null) => void;
  /** What was read of photos. */
  photographed: (texts: readonly NewText[]) => void;
  chooseSheets: (sheets: readonly number[]) => void;
  changeText: (at: number, text: string) => void;
  removeText: (at: number) => void;
  hint: (hints: Hints, at?: number) => void;
  /** Says what the weather was, of all the texts. */
  weather: (conditions: Conditions) => void;
  rename: (build: string, name: string) => void;
  undo: () => void;
  redo: () => void;
  dropCut: () => void;
  ask: (patch: Patch<Question>) => void;
  /** Sets a shot aside for a reason, or puts it back (null). */
  leaveOut: (shot: number, reason: string | null) => void;
  /** Says of a shot that was asked about that it is right. */
  confirm: (shot: number) => void;
  showMoreShots: () => void;
  /** Draws the page anew: something that it shows has been loaded. */
  drawAgain: () => void;
  startAgain: () => void;
  /** Back to how the sender of the link asked. */
  asSent: () => void;
  /** Asks the core directly: what it shows belongs to its own part and changes nothing else on the page. */
  luck: (request: LuckRequest) => Promise<Luck>;
  /** The same for an answer beside the answer. */
  check: (request: CheckRequest) => Promise<Report>;
  read: (text: string, hints: Hints) => Promise<ReadResult>;
  share: (request: ShareRequest) => Promise<Shared>;
  writeCsv: (session: Session, question?: Question) => Promise<string>;
}
