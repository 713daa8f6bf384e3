/** What is kept on this device, looked into once what the page opened with stands: nothing of it comes before an answer. */
import { openIfKept } from "../book/book.js";
import { throwAway } from "../book/shelf.js";
import { mark, underWay } from "../book/tests.js";
import { goOn } from "./doors.js";

/** A way to the book on the first screen: only for those who have one. */
function offerBook(): void {
  const ways = document.querySelector("#start nav");
  if (!ways || ways.querySelector("[href='#book']")) return;
  const way = Object.assign(document.createElement("a"), { className: "small way", href: "#book" });
  way.textContent = document.querySelector("#book-title")?.textContent ?? "";
  ways.append(way);
}

/** Goes on with a test that only the store knows of; throws away what was deleted a month ago. */
export async function lookInside(): Promise<void> {
  const book = await openIfKept();
  if (!book) return;
  await throwAway(book);
  offerBook();
  const [open] = await underWay(book);
  await mark(book);
  if (open && location.hash === "") goOn();
}
