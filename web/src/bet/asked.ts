/** The bet on what is asked, worked out once for the line below the answer and for the room with its dots. */
import type { Bet, Question, Session } from "../core/engine.js";
import { engineOfPage } from "../core/remote.js";

let last: { session: Session; question: Question; bet: Promise<Bet> } | null = null;

export function betOn(session: Session, question: Question): Promise<Bet> {
  if (last?.session !== session || last.question !== question) {
    const bet = engineOfPage().then((engine) => engine.bet({ session, question }));
    last = { session, question, bet };
    // A failed attempt is made again at the next.
    bet.catch(() => {
      if (last?.bet === bet) last = null;
    });
  }
  return last.bet;
}
