import { one, type StatementSnippets } from './snippet.ts';

/** Statements of gates, by rule of the grammar. */
export const GATES_SNIPPETS: StatementSnippets = {
  Opening: [one('opening', `opening [42"~1050 mm] from [8'~2.4 m]`, 'clear between gate posts')],
  HingeSide: [
    one(
      'hinges on',
      'hinges on [left|right]',
      'as seen from the front; add `seen from` and a side to say it from there',
    ),
    one('hinges on, count', 'hinges on [left|right], [3] hinges', 'and how many'),
  ],
  OpensTo: [one('opens to', 'opens to [garden]', 'the side the leaf travels toward')],
  AccessibleGate: [one('accessible', 'accessible', 'asks it to be wide enough for a wheelchair')],
  HingeGap: [one('hinge gap', 'hinge gap [1/4"~6 mm]', 'beside the hinges')],
  LatchGap: [one('latch gap', 'latch gap [1/2"~12 mm]', 'beside the latch')],
  GatePosts: [
    one('posts', 'posts []', "the gate's own posts; two names: the one it hangs on, and the other"),
  ],
  FrameStatement: [one('frame', 'frame []', 'stiles and rails of the leaf')],
  LeavesStatement: [
    one(
      'leaves two',
      `leaves two, meeting gap [1/2"~12 mm]`,
      'that meet; the hinges named are those of the active leaf',
    ),
    one(
      'leaves two, active',
      `leaves two, meeting gap [1/2"~12 mm], active leaf [36"~900 mm]`,
      'and how wide the active one is',
    ),
  ],
  GateRails: [
    one('rails', 'rails [3]', 'in all, evenly spaced'),
    one('rails at', `rails at [3'~900 mm]`, 'middle rails: their middles above ground'),
    one('rails at course', 'rails at course [5]', 'middle rails that carry courses of the run on'),
  ],
  BraceStatement: [
    one('brace', 'brace [none]', 'from the low hinge corner up to the latch'),
    one('brace cable', 'brace cable', 'from the top hinge corner down to the latch, where it pulls'),
  ],
};
