/** A table read off a photo, or big numbers under labels, with what is in doubt. */
export type PhotoReading = {
  /** Big numbers, each under its label, in one row; otherwise a table. */
  is_tiles: boolean,
  /** From the left. */
  columns: PhotoColumn[],
  /** How many there are. */
  rows: number,
  /** Row by row; what is empty is left out. */
  cells: PhotoCell[],
  /** Lines above the headings. */
  above: string[],
  /** Lines below the last row. */
  below: string[],
  /** All cut-outs, one behind the other: gray, `cut_height` high, row by row. */
  cuts: Uint8Array,
  /** How high each cut-out is. */
  cut_height: number,
};

/** A column of a table, or a tile. */
export type PhotoColumn = {
  /** As it stands above, with its unit. */
  heading: string,
  /** Whether it holds numbers. */
  is_number: boolean,
  /** Whether a number in it has a sign, or the letter of a side: what was lost there is easily overlooked. */
  has_signs: boolean,
};

/** A text in its row and column. */
export type PhotoCell = {
  /** From the top. */
  row: number,
  /** From the left. */
  column: number,
  /** As it was read; empty when nothing was, where something stands. */
  text: string,
  /** What a second look said, when it was something else. */
  other: string | null,
  /** Why to look at it again; none when nothing speaks against it. */
  doubts: PhotoDoubt[],
  /** Its corners in the picture that was given, from the top left on. */
  quad: [[number, number], [number, number], [number, number], [number, number]],
  /** Where its cut-out lies among all of them. */
  cut: { from: number, width: number } | null,
};

/** Why a number is to be looked at. */
export type PhotoDoubt =
  | "unsure"
  | "read_otherwise"
  | "out_of_line"
  | "against_another"
  | "filled"
  | "missing"
  | "sign";

/** Why nothing is taken over; thrown. */
export type PhotoRefusal = {
  kind: "no_picture" | "no_text" | "no_table" | "too_much" | "too_poor",
  /** Numbers in doubt or missing, when they are too many. */
  doubtful: number,
  /** All numbers of the table. */
  of: number,
};

/** What is being done: so many of so many texts are read; none before they are found. */
export type PhotoProgress = (done: number, of: number) => void;
