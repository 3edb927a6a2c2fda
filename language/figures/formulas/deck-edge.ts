/** A post bolted to the edge of a deck: pounds and inches. */
export interface DeckEdge {
  readonly load: number;
  /** Of the load above the deck surface. */
  readonly arm: number;
  readonly boltsApart: number;
  /** Middle of the bolts below the deck surface. */
  readonly boltsBelow: number;
}

/** What it comes to at the deck and in its two bolts: in-lb and pounds, by statics. */
export interface DeckEdgeLoads {
  readonly moment: number;
  readonly couple: number;
  readonly upper: number;
  readonly lower: number;
}

export function deckEdge({ load, arm, boltsApart, boltsBelow }: DeckEdge): DeckEdgeLoads {
  const toMiddle = arm + boltsBelow;
  return {
    moment: load * arm,
    couple: (load * toMiddle) / boltsApart,
    upper: (load * (toMiddle + boltsApart / 2)) / boltsApart,
    lower: (load * (toMiddle - boltsApart / 2)) / boltsApart,
  };
}
