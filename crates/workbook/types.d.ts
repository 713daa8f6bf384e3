/** A sheet of a workbook. */
export type Sheet = {
  /** As its tab says. */
  name: string,
  /** Rows with anything in them. */
  rows: number,
  /** One line for each row from the first on, cells set apart by tabs; empty when the sheet is. */
  text: string,
};

/** Why a workbook cannot be read. */
export type Refusal = {
  /** Stable name of the kind, `snake_case`. */
  kind: string,
  /** The sheet it is about; empty when it is the file. */
  place: string,
  /** What is wrong, in plain words. */
  message: string,
  /** What to do about it. */
  remedy: string,
};
