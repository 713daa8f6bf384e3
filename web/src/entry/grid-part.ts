/** The typing grid: a tab for each club, a row for each shot; the core reads what was typed after every cell. */
import type { TemplateResult } from "lit";
import type { ReadResult } from "../core/engine.js";
import { say } from "../text/say.js";
import { EntryElement } from "./element.js";
import {
  type Cell,
  emptyGrid,
  type Grid,
  isSeveralCells,
  type Mistake,
  mistakes,
  nextCell,
  shotsOf,
  withClub,
  withPasted,
  written,
} from "./grid.js";
import { gridView } from "./grid-view.js";

export class StraightAnswerGrid extends EntryElement<Grid> {
  #club = 0;
  #at: Cell = { club: 0, row: 0, column: 0 };
  #mistakes: readonly Mistake[] = [];
  /** What the core asks of whole columns: the unit in which they would make sense. */
  #questions: ReadonlyMap<string, string> = new Map();
  #units: ReadonlyMap<string, readonly string[]> = new Map();
  #said = "";

  protected override empty(): Grid {
    // Beside the one club that is there, the other one is typed.
    this.#club = this.clubs.length === 1 ? 1 : 0;
    return emptyGrid(this.clubs);
  }

  protected override write(grid: Grid): ReturnType<typeof written> {
    return written(grid, this.measures);
  }

  protected override wasRead(grid: Grid, result: ReadResult): void {
    this.#mistakes = mistakes(result, this.write(grid), grid, this.measures);
    const columns = result.reading.columns.flatMap((column) => {
      const id = grid.columns[column.index - 1];
      return id === undefined ? [] : [{ ...column, id }];
    });
    this.#units = new Map([...this.#units, ...columns.map(({ id, units }) => [id, units] as const)]);
    this.#questions = new Map(
      columns.flatMap(({ id, unit_question }) => (unit_question ? [[id, unit_question] as const] : [])),
    );
  }

  override render(): TemplateResult {
    const grid = this.now;
    const shown = {
      grid,
      measures: this.measures,
      club: Math.min(this.#club, grid.clubs.length - 1),
      at: this.#at,
      mistakes: this.#mistakes,
      questions: this.#questions,
      units: this.#units,
      said: this.#said,
      canUndo: this.canUndo,
    };
    return gridView(shown, {
      show: (club) => {
        this.#club = club;
        this.requestUpdate();
      },
      addClub: () => {
        this.#club = grid.clubs.length;
        this.change(withClub(grid));
      },
      at: (cell) => {
        this.#at = cell;
        this.requestUpdate();
      },
      typing: (next) => this.typing(next),
      typed: () => this.typed(),
      change: (next) => this.change(next),
      next: (from) => this.#next(from),
      paste: (at, event) => this.#paste(at, event),
      undo: () => {
        this.#said = "";
        this.undo();
      },
      finish: () => this.#finish(),
      cancel: () => this.cancel(),
    });
  }

  #next(from: Cell): void {
    this.typed();
    const to = nextCell(from, this.now);
    void this.updateComplete.then(() => {
      const field = this.querySelector<HTMLInputElement>(`[data-cell="${to.row}.${to.column}"]`);
      field?.focus();
      field?.select();
    });
  }

  /** Several cells fill the grid from here on; a single one is an ordinary paste. */
  #paste(at: Cell, event: ClipboardEvent): void {
    const text = event.clipboardData?.getData("text/plain") ?? "";
    if (!isSeveralCells(text)) return;
    event.preventDefault();
    const { grid, left } = withPasted(this.now, at, text);
    this.#said = left === 0 ? "" : say("grid-no-place", { count: left });
    this.change(grid);
  }

  #finish(): void {
    this.typed();
    const grid = this.now;
    if (grid.clubs.every((club) => shotsOf(club) === 0)) {
      this.#said = say("grid-empty");
      this.requestUpdate();
      return;
    }
    const { text, hints } = this.write(grid);
    this.done({ source: { kind: "typed", name: say("grid-source"), text, draft: grid }, hints });
  }
}
