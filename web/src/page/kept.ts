/** What is kept on this device, looked into once what the page opened with stands: nothing of it comes before an answer. */
import { openIfKept } from "../book/book.js";
import { throwAway } from "../book/shelf.js";
import { mark, underWay } from "../book/tests.js";
import { goOn } from "./doors.js";

/** Goes on with a test that only the store knows of; throws away what was deleted a month ago. */
export async function lookInside(): Promise<void> {
  const book = await openIfKept();
  if (!book) return;
  await throwAway(book);
  const [open] = await underWay(book);
  await mark(book);
  if (open && location.hash === "") goOn();
}
