/** The page of `src/main.ts` with all its rooms, as one script. */
import "../src/main.js";
import "./print.css";
