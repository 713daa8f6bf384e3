/** What the page and the parts beside it give each other: a session to answer, and the answer that stands. */
import type { Engine, Question, Report, Session } from "../core/engine.js";

/** The session on the page with its question and answer. */
export interface Current {
  session: Session;
  question: Question;
  report: Report | null;
  /** Whether somebody sent it. */
  isSent: boolean;
}

export interface PagePort {
  engine: Promise<Engine>;
  /** What stands on the page; null before anything was read. */
  current: () => Current | null;
  /** Shows the answer to a session in the tool's own CSV. */
  /** `of`: whose shots they are, where that is known. */
  showAnswer: (csv: string, question: Question, of?: string) => void;
  /** Takes shots and answer off the page. */
  coverAnswer: () => void;
}
