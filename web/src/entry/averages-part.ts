/** The form of averages: what a receipt, a screen or a photo shows of each club; the core reads it after every field. */
import type { TemplateResult } from "lit";
import type { ReadResult } from "../core/engine.js";
import { say } from "../text/say.js";
import { type Averages, emptyAverages, type Fault, faults, writtenAverages } from "./averages.js";
import { averagesView } from "./averages-view.js";
import { EntryElement } from "./element.js";

export class StraightAnswerAverages extends EntryElement<Averages> {
  #faults: readonly Fault[] = [];
  #notices: readonly string[] = [];
  #units: ReadonlyMap<string, readonly string[]> = new Map();
  #said = "";

  protected override empty(): Averages {
    return emptyAverages(this.clubs);
  }

  protected override write(form: Averages): ReturnType<typeof writtenAverages> {
    return writtenAverages(form, this.measures);
  }

  protected override wasRead(form: Averages, result: ReadResult): void {
    const written = this.write(form);
    this.#said = "";
    this.#faults = faults(result, written, form, this.measures);
    const telling = ["deviation_missing", "count_missing", "chosen_shots", "implausible"];
    this.#notices =
      written.clubs.length === 0
        ? []
        : result.notices.filter(({ kind }) => telling.includes(kind)).map(({ message }) => message);
    const known = form.columns.flatMap((id, at) => {
      const column = result.reading.columns.find(({ index }) => index === 3 + 2 * at);
      return column ? [[id, column.units] as const] : [];
    });
    this.#units = new Map([...this.#units, ...known]);
  }

  override render(): TemplateResult {
    return averagesView(
      {
        form: this.now,
        measures: this.measures,
        faults: this.#faults,
        notices: this.#notices,
        units: this.#units,
        said: this.#said,
        canUndo: this.canUndo,
      },
      {
        typing: (next) => this.typing(next),
        typed: () => this.typed(),
        change: (next) => this.change(next),
        undo: () => this.undo(),
        finish: () => this.#finish(),
        cancel: () => this.cancel(),
      },
    );
  }

  #finish(): void {
    this.typed();
    const { text, hints, clubs } = this.write(this.now);
    if (clubs.length === 0) {
      this.#said = say("averages-empty");
      this.requestUpdate();
      return;
    }
    this.done({ source: { kind: "averages", name: say("averages-source"), text, draft: this.now }, hints });
  }
}
