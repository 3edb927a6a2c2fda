import type { ProblemArgs } from '../model/index.ts';
import { commonPractice, LANGUAGE } from './define.ts';
import { defineFamily } from './family.ts';

/** What is wrong with the text or with what it refers to; found while the job is read, told here. */
export const statedProblems = defineFamily<ProblemArgs>('model', LANGUAGE, {
  'unit-missing': {
    message: (a) => `${a.spelling} of what? A length bears its unit${orSuch(a.hints, a.hint)}.`,
  },
  'length-unknown-unit': {
    message: (a) =>
      `${a.spelling}: this unit is not known here${orSuch(a.hints, a.hint)}. Known are ', ", mm, cm and m.`,
  },
  'length-spelling': {
    message: (a) => `${a.spelling} ${DOUBTS[a.problem] ?? 'is no length'}${orSuch(a.hints, a.hint)}.`,
  },
  'amount-unclear': {
    message: (a) =>
      a.reason === 'unit'
        ? `${a.spelling} is no ${a.what}. Write it in ${a.units}.`
        : `A ${a.what} of ${a.spelling} is past what is worked out here (${a.range}). Is the unit right?`,
  },
  'impossible-size': {
    message: (a) => {
      switch (a.reason) {
        case 'zero':
          return `The ${a.what} is ${a.size}. Write a length greater than nothing.`;
        case 'too-long':
          return `The ${a.what} is ${a.size}; nothing longer than ${a.limit} is laid out. Is the unit right?`;
        case 'low-over-high':
          return `The ${a.what} begins at ${a.size} and ends at ${a.limit}. Write the smaller length first.`;
        case 'too-short':
          return `The ${a.what} are ${a.size} long; two thirds are in the ground, and above it a brace needs ${a.limit} in all. Write longer ones.`;
        case 'not-narrower':
          return `The ${a.what} is ${a.size}, which is not narrower than the ${a.limit} it is ripped from.`;
        case 'not-thinner':
          return `The ${a.what} is ${a.size}; the cap is ${a.limit} at its thickest. Write a thinner ${a.what}.`;
        case 'no-pocket':
          return `A ${a.what} of ${a.size} leaves nothing inside a channel of ${a.limit}. Write a thinner wall or a larger channel.`;
        case 'over-board':
          return `The usable lengths come to ${a.size}, and the board has ${a.limit}. Write no more than it has.`;
        case 'over-100':
          return `The ${a.what} is ${a.size}. Write a share from 0 to 100 %.`;
      }
    },
  },
  'absurd-count': {
    message: (a) => {
      switch (a.reason) {
        case 'not-whole':
          return `${a.count} is not a whole number of ${a.what}.`;
        case 'too-few':
          return `${a.count} ${a.what} is too few; write ${a.least} or more.`;
        case 'too-many':
          return `${a.count} ${a.what} is more than the ${a.most} that are laid out. Is it mistyped?`;
      }
    },
  },
  'stated-twice': {
    severity: 'warning',
    message: (a) => `\`${a.what}\` is stated twice in this ${a.block}; the first one counts. Remove one.`,
  },
  'wrong-statement': {
    message: (a) => `\`${a.what}\` does not belong in a ${a.block}. ${SIDES[a.block] ?? 'Remove it.'}`,
  },
  'missing-statement': {
    message: (a) =>
      `${capital(a.block)} ${a.name} lacks \`${a.what}\`${a.candidates === '' ? '' : `; known are ${a.candidates}`}. ${NEEDED[a.what] ?? ''}`.trim(),
  },
  'unknown-word': {
    message: (a) =>
      `"${a.word}" is no ${a.place} known here${a.suggestion === '' ? '.' : `; did you mean ${a.suggestion}?`} Known are ${a.known}.`,
  },
  'money-unclear': {
    message: (a) =>
      a.reason === 'mixed'
        ? `This is in ${a.spelling}; the job counts in ${a.currency}. Write every price in one currency.`
        : `"${a.spelling}" is no money known here. Write $19.20, €19.20, or 19.20 CHF, with no more decimals than the currency has.`,
  },
  'duplicate-name': {
    message: (a) =>
      `There is another ${a.kind} named ${a.name}${a.elsewhere ? ' in a file used here' : ''}. Give one of them another name.`,
  },
  'wrong-kind': {
    message: (a) => `${a.name} is a ${a.kind}; ${a.place} takes a ${a.needed}.`,
  },
  'not-in-repeat': {
    message: (a) =>
      `\`${a.place}\` names ${a.slat}, which ${a.pattern} does not repeat. Name a slat of its repeat.`,
  },
  circular: {
    message: (a) => `The ${a.kind} ${a.name} comes back to itself. Let it begin with something else.`,
  },
  'used-broken': {
    message: (a) => `The ${a.kind} ${a.name} cannot be used: something is wrong where it is stated.`,
  },
  'gate-run': {
    message: (a) =>
      a.reason === 'other-file'
        ? `Gate ${a.gate} hangs in ${a.run}, which is in another file. State the gate where its run is.`
        : `Gate ${a.gate} waits for its run ${a.run}, which cannot be worked out yet.`,
  },
  'racked-level-slats': {
    severity: 'warning',
    basis: commonPractice('level slats step and do not rack: racking tilts them'),
    message: (a) =>
      `Racking would tilt the level slats of ${a.run}, so it keeps a level top here. Write \`slope level top\` or \`slope in steps\`, or stand the slats up with \`flip upright\` and rails.`,
  },
  'placement-circular': {
    message: (a) =>
      `Run ${a.run} comes after itself: ${a.way}. Let one of them begin at a point, with \`placed at\`.`,
  },
  'lines-circular': {
    message: (a) =>
      `Run ${a.run} waits for its own slat lines: ${a.way}. Let one of them be fitted for itself.`,
  },
  'placement-unclear': {
    severity: 'error',
    message: (a) => {
      switch (a.reason) {
        case 'other-file':
          return `Run ${a.other} is in another file; a run comes after one of its own file.`;
        case 'taken':
          return `Another run comes after ${a.other} already. Let ${a.run} come after that one, or begin at a point.`;
        case 'both':
          return `Run ${a.run} is placed at a point and after ${a.other}. Keep one of them; the point counts.`;
        case 'alone':
          return `Run ${a.run} has a \`corner\` and comes after no run. Write \`after\` with the name of a run.`;
        case 'angle':
          return `An inside angle of ${a.other} is not laid out; write one from 30° to 180°, which is straight on.`;
        case 'sides':
          return `No corner has sides of ${a.other}. Write what is measured along one run, along the other, and across between the marks.`;
        case 'bearing':
          return `A bearing of ${a.other} is past a full turn; write 0° for north, 90° for east, up to 360°.`;
      }
    },
  },
  'wall-unclear': {
    message: (a) => {
      switch (a.reason) {
        case 'comes-after':
          return `Run ${a.run} comes after another run, so it cannot begin at a wall too. Take \`begins at wall\` or \`after\` out.`;
        case 'followed':
          return `Run ${a.other} comes after ${a.run}, so ${a.run} cannot end at a wall too. Take \`ends at wall\` or that \`after\` out.`;
        case 'one-wall':
          return `A length \`between walls\` goes from wall to wall: write both \`begins at wall\` and \`ends at wall\`, or state the length \`over posts\`.`;
        case 'no-room':
          return `The gaps to both walls leave nothing of the length between them. Is one of the three mistyped?`;
        case 'no-wall':
          return `Run ${a.run} has a filler and meets no wall. Write \`begins at wall\` or \`ends at wall\`, each with how far it is off the post.`;
        case 'same-height':
          return `The wall is measured twice at one height. Write each height once.`;
        case 'split-posts':
          return `Slats of ${a.run} run through split posts to their outer faces, and a filler in the middle of such a post meets no wood. Put the slats in grooves or channels, or take \`scribed filler\` out and leave a gap at the wall.`;
      }
    },
  },
});

const DOUBTS: Readonly<Record<string, string>> = {
  'inches-over-foot': 'has twelve inches or more after the feet',
  'spaced-minus': 'can be read in two ways: as a fraction after its whole inches, or as a subtraction',
  'thousands-mark': 'has a mark between its digits',
  'decimal-comma': 'has a comma where a point belongs',
  'missing-inch-mark': 'lacks the inch mark after its inches',
  'improper-fraction': 'has a fraction greater than one',
  'zero-denominator': 'divides by nothing',
  'fraction-of-foot': 'has a fraction of a foot',
  'too-large': 'is longer than anything laid out here',
  'not-a-length': 'is no length',
};

const SIDES: Readonly<Record<string, string>> = {
  'gate with two leaves':
    'Its leaves shut against each other: write `leaves two, meeting gap` with the gap between them.',
  post: 'A post is stated by `along` the run and `through` it.',
  board: 'A board is stated by `width`, the face seen, and `thickness`.',
  rail: 'A rail is stated by `width`, the face seen, and `thickness`.',
  cleat: 'A cleat is stated by `width`, the face seen, and `thickness`.',
};

const NEEDED: Readonly<Record<string, string>> = {
  length: "Write, say, `length 24' over posts`.",
  posts: "Write, say, `posts` with the name of a post and `, at most 6' clear`.",
  height: "Write, say, `height 6'`.",
  fill: 'Write `fill` with the name of a pattern.',
  opening: 'Write, say, `opening 42" from 7\'`.',
  repeat: 'Write `repeat` with the names of its boards, from the top.',
  gap: 'Write, say, `gap 1/2"`.',
};

/** The ways out, as they end a sentence: `: write 7" or 7'`. */
function orSuch(hints: string, hint: string): string {
  const all = hints === '' ? (hint === '' ? [] : [hint]) : hints.split(' | ');
  if (all.length === 0) return '';
  const last = all[all.length - 1];
  return all.length === 1 ? `: write ${last}` : `: write ${all.slice(0, -1).join(', ')} or ${last}`;
}

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);
