/** The grid and the form, loaded when one of them is opened (`views/entry.ts`). */
import "./entry.css";
import english from "../text/en/entry.ftl?raw";
import { learn } from "../text/say.js";
import { StraightAnswerAverages } from "./averages-part.js";
import { StraightAnswerGrid } from "./grid-part.js";

learn(english);

customElements.define("straight-answer-grid", StraightAnswerGrid);
customElements.define("straight-answer-averages", StraightAnswerAverages);
