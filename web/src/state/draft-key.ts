/** Where a draft lies: in the store of the tab, which other tabs do not see and which goes with it. */
export const DRAFT = "straight-answer-draft";
