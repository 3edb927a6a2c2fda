import type { GeometryArgs } from '../layout/index.ts';
import { bridgeMessage } from './bridge-impossible.ts';
import { GEOMETRY, JOB } from './define.ts';
import { defineFamily } from './family.ts';

/** What cannot be built as written; found while laying out a run, told here. */
export const impossibleGeometry = defineFamily<GeometryArgs>('layout', GEOMETRY, {
  'no-size': { message: (a) => `The ${a.what} has no size. Write a length greater than nothing.` },
  'no-height': {
    message: (a) =>
      `The top, at ${a.height}, is not above the bottom, at ${a.bottom}. Raise the height or lower the bottom.`,
  },
  'lines-elsewhere': {
    severity: 'warning',
    message: (a) => `Run ${a.run} cannot go on with the lines of ${a.other}${LINES[a.why]}`,
  },
  'posts-overlap': {
    message: (a) =>
      `A post at ${a.station} would stand in the one before it, which reaches to ${a.until}. Move one of them.`,
  },
  'gate-too-wide': {
    message: (a) =>
      `Gate ${a.gate} with an opening of ${a.opening} and its two posts takes more than the ${a.room} there is. ` +
      'Make the opening narrower or the run longer.',
  },
  'gate-outside': {
    message: (a) =>
      `Gate ${a.gate} with its posts reaches from ${a.from} to ${a.to}; the run is ${a.length} long. ` +
      'Move the opening so that both gate posts stand in the run.',
  },
  'gates-overlap': {
    message: (a) =>
      `Gate ${a.second} begins before the opening of ${a.first} ends at ${a.until}. Move one of them.`,
  },
  'post-in-opening': {
    message: (a) =>
      `A post is stated at ${a.station}, in the opening of gate ${a.gate}. Leave it out, or move the gate.`,
  },
  'ground-outside': {
    severity: 'warning',
    message: (a) =>
      `The ground is stated at ${a.station}, past the end of the run, which is ${a.length} long. State it within the run, or make the run longer.`,
  },
  'post-in-obstacle': {
    message: (a) =>
      `A post from ${a.station} to ${a.until} stands where no hole may be, from ${a.from} to ${a.to}${a.reason === '' ? '' : ` (${a.reason})`}. ` +
      (a.why === 'stated'
        ? 'It is stated to stand there: move it, or the gate or the end it belongs to.'
        : 'No equal bays, mirrored pair or wide middle within the spacing keep clear of it: allow wider bays, or state the stations.'),
  },
  'stations-order': {
    message: (a) =>
      `Station ${a.station} comes after ${a.before}. Write the stations from the smallest to the greatest.`,
  },
  'station-outside': {
    message: (a) => `A post at ${a.station} is past the end of the run, which is ${a.length} long.`,
  },
  'no-room': {
    message: (a) =>
      `There is no room for ${a.posts} more posts between ${a.from} and ${a.to}. Ask for fewer.`,
  },
  'spacing-too-small': {
    message: (a) => `Posts at most ${a.limit} apart would stand in one another. Allow more between them.`,
  },
  'too-few-bays': {
    message: (a) =>
      `Asked for is a count of ${a.asked}; with its gates this run has at least ${a.least} bays.`,
  },
  'too-few-posts': {
    message: (a) =>
      `Asked for is a count of ${a.asked}; with its gates this run has at least ${a.least} posts.`,
  },
  'too-many-posts': {
    message: (a) => `That makes more than ${a.most} posts. Is a spacing or the length mistyped?`,
  },
  'too-many-pieces': {
    message: (a) =>
      `That makes more than the ${a.most} pieces laid out in one run. Is a width or a gap mistyped?`,
  },
  'bay-too-narrow': {
    message: (a) =>
      `Bay ${a.bay} is ${a.clear} clear; the slats' ends and what holds them need ${a.needs}. Set the posts farther apart.`,
  },
  'kick-no-room': {
    severity: 'warning',
    message: (a) =>
      `Under the slats of ${a.count === 1 ? 'bay' : 'bays'} ${a.bays} less than ${a.least} is left for a kick board, so ${a.count === 1 ? 'it has' : 'they have'} none. Raise the \`bottom\`, or let the board come nearer to the ground.`,
  },
  'bracing-no-room': {
    severity: 'warning',
    message: (a) =>
      a.what === 'strips'
        ? `The two strips of ${a.at} need ${a.needs} of the post above the ground, and there are ${a.room}, so they are left out. Write \`strips at\` with two heights that go there, one board apart at least, or choose a narrower board.`
        : `The braces of ${a.at} do not meet it between their stakes and its top, ${a.room} up, so they are left out. Write a height that does, such as two thirds of the post, with \`up\`.`,
  },
  'too-low-for-rails': {
    message: (a) =>
      `Between bottom and top there is ${a.height}; the two rails and the slats between them need ${a.needs}.`,
  },
  'rails-missing': {
    message: (a) =>
      `Upright slats in ${a.run} need rails to carry them. Write \`rails\` with the name of a rail.`,
  },
  'cleats-missing': {
    message: (a) =>
      `Slats of ${a.name} stand between what holds them and need cleats. Write \`cleats\` with the name of a cleat, ` +
      'or put the slats on a face.',
  },
  'cleats-miss': {
    message: (a) =>
      `The ${a.holder} is ${a.thickness} through; beside a slat ${a.slat} thick a cleat would touch nothing. ` +
      'Use a deeper section or thinner slats.',
  },
  'end-gap-too-wide': {
    message: (a) =>
      `With an end gap of ${a.gap} the slats miss the ${a.holder}, which is ${a.width} wide there. Make the end gap smaller.`,
  },
  'slat-too-thick': {
    message: (a) =>
      `A slat ${a.slat} thick does not go into ${a.in === '' ? 'a groove' : `${a.in}, which is`} ${a.room} ${a.in === '' ? 'wide' : 'inside'}. ` +
      (a.in === ''
        ? 'Make the groove wider than the slat, or leave its width out.'
        : 'Use a wider channel or thinner slats.'),
  },
  'groove-too-deep': {
    message: (a) =>
      `A groove ${a.depth} deep${a.sides === 2 ? ' from each side' : ''} leaves nothing of ${a.holder}, which is ${a.room} there. ` +
      'Make the grooves shallower, or use a larger section.',
  },
  'groove-too-wide': {
    message: (a) =>
      `A groove ${a.width} wide leaves no wood before or behind it in ${a.holder}, which is ${a.thickness} through. ` +
      'Use a deeper section or thinner slats.',
  },
  'groove-in-tube': {
    message: (a) =>
      `${a.holder} is a tube, and a groove would open it. Write \`slats in channels\` with channels on it, or use a full section.`,
  },
  'pockets-racked': {
    message: (a) =>
      `Slats of ${a.run} end in grooves or channels, and its rails slope with the ground: that is not laid out. ` +
      'Put them on a face or between the rails on cleats, or write `slope in steps`.',
  },
  'split-upright': {
    message: (a) =>
      `Upright slats cannot run through the posts of ${a.run}. Take \`upright\` out, or write \`slats in grooves\`, which are those of its rails.`,
  },
  'alternate-boards': {
    message: (a) =>
      `Slats on alternate faces are all of one board; ${a.pattern} has ${a.boards}. ` +
      'Fill with a pattern of one board, or write `slats on both faces`.',
  },
  'post-depths': {
    message: (a) =>
      `Slats on both faces lie on posts of one depth; ${a.post} is ${a.depth} through, the others are ${a.usual}. ` +
      'Use a post of the same depth that is wider along the run, or put the slats between the posts.',
  },
  'leaf-too-small': {
    message: (a) =>
      `The leaf of ${a.gate}, ${a.width} by ${a.height}, has no inside: its frame needs ${a.needsWidth} by ${a.needsHeight}.`,
  },
  'rail-misplaced': {
    message: (a) => {
      switch (a.why) {
        case 'outside':
          return `The rail of ${a.gate} at ${a.rail} does not go between its top and bottom rails. State it within the leaf.`;
        case 'meets':
          return `The rail of ${a.gate} at ${a.rail} stands where another of its rails is. Set them farther apart, or ask for fewer.`;
        case 'no-course':
          return `Beside ${a.gate} there is no ${a.rail} for its rail to carry on. Name a course of the bay next to it.`;
        case 'between':
          return `Slats between the frame of ${a.gate} take the place of a middle rail. Put the slats on a face, or leave \`rails\` out.`;
      }
    },
  },
  'brace-no-room': {
    message: (a) => {
      const use = (slats: string) =>
        a.by === 'brace'
          ? `Use a thinner brace, a deeper frame, ${slats}, or \`brace cable\`.`
          : `Use a deeper frame, or ${slats}.`;
      switch (a.held) {
        case 'cleats':
          return `The slats, cleats and ${a.by} of ${a.gate} need ${a.needs} of depth one behind the other; its frame has ${a.room}. ${use('slats on the face')}`;
        case 'grooves':
        case 'channels':
          return `Slats in ${a.held} stand in the middle of the frame of ${a.gate}; with the ${a.by} behind them it is to be ${a.needs} deep, and it is ${a.room}. ${use('slats on the face')}`;
        case 'faces':
          return `Between the slats of both faces of ${a.gate} its ${a.by}, ${a.needs} thick, does not go into the frame, ${a.room} deep. ${use('slats on one face')}`;
      }
    },
  },
  'brace-too-wide': {
    message: (a) =>
      a.by === 'brace'
        ? `The brace of ${a.gate}, ${a.width} wide, does not go into its frame. Use a narrower brace, a larger leaf, or fewer rails.`
        : `The cable of ${a.gate}, ${a.width} thick, does not go between the rails of its frame. Set them farther apart.`,
  },
  'corner-slats': {
    message: (a) => {
      switch (a.why) {
        case 'inside':
          return (
            `Slats on the face inside the turn from ${a.first} to ${a.second} do not reach the corner post. ` +
            'Put the slats of both on the other face, or between posts.'
          );
        case 'mixed':
          return (
            `\`corner ${a.corner}\` joins level slats that lie on the same face of ${a.first} and ${a.second}. ` +
            'Put both on that face, or write `corner post`.'
          );
        case 'straight':
          return `${a.second} goes straight on from ${a.first}; there is no corner to ${a.corner}. Write \`corner post\`, or a turn.`;
        case 'sharp':
          return `The corner from ${a.first} to ${a.second} is so sharp that what stands beside the post on one side is in the way of the other. Open the angle, or let ${a.second} begin at a point of its own.`;
        case 'grooves':
          return (
            `Slats of ${a.second} end in grooves, and its first post is the last one of ${a.first}, which is grooved for that run alone. ` +
            `Write \`after ${a.first}, 3/4" on\` for a post of its own, or put its slats in channels or on cleats.`
          );
        case 'split':
          return (
            `Slats run through split posts, and ${a.first} and ${a.second} share one, where they would be in each other's way. ` +
            `Write \`after ${a.first}, 3/4" on\` for a post of its own, or put the slats in grooves.`
          );
        case 'cut':
          return `A ${a.corner} at this angle needs a cut of more than 60°. Write \`corner miter\`, which halves the turn.`;
      }
    },
  },
  'bridge-impossible': { message: bridgeMessage },
  'stiffeners-no-room': {
    message: (a) =>
      `Bay ${a.bay} is ${a.clear} clear; its stiffeners and cleats need ${a.needs}. Ask for fewer, or set the posts farther apart.`,
  },
  'batten-too-wide': {
    message: (a) =>
      `Post ${a.post} stands beside a gate and is ${a.along} along the run; ${a.batten}, ${a.width} wide, would be in the leaf's way. Use a narrower batten.`,
  },
  'collar-no-room': {
    message: (a) =>
      `The collar at the ${a.end} of post ${a.post} needs ${a.needs}; there is ${a.room} ${
        a.end === 'top'
          ? 'above the slats. Raise the posts with `tops`'
          : 'below the slats. Raise the `bottom`'
      }, or use a narrower board.`,
  },
  'measured-elsewhere': {
    severity: 'warning',
    basis: JOB,
    message: (a) => {
      if (a.what === 'cut')
        return a.count === 0
          ? `Slats of bay ${a.number} are said to be cut, and there are none. Write the number of a bay that slats fill.`
          : `Bay ${a.number} has ${a.count} courses now; those beyond are said to be cut and are left out. Write those there are.`;
      const what = a.what === 'bay' ? 'Bay' : 'Post';
      if (a.now === '')
        return `${what} ${a.number} was measured, and the run has ${a.count} ${a.what}s now. ${elsewhere(a)} It is not used.`;
      const [then, now] = [a.planned, a.now].map((size) =>
        a.what === 'bay' ? `${size} clear` : `at ${size}`,
      );
      return `${what} ${a.number} was measured when it was planned ${then}; now it is planned ${now}. ${elsewhere(a)} It is not used.`;
    },
  },
  'pieces-overlap': { message: (a) => `${a.first} and ${a.second} are in the same place.` },
});

function elsewhere({ what, planned, others }: GeometryArgs['measured-elsewhere']): string {
  if (others === '') return 'Measure it again, or set the plan back.';
  return what === 'bay'
    ? `Now ${planned} clear: bay ${others}. If it is that one, write its number.`
    : `Now at ${planned}: post ${others}. If it is that one, write its number.`;
}

const LINES: Readonly<Record<GeometryArgs['lines-elsewhere']['why'], string>> = {
  missing: ', which cannot be built yet. It is fitted for itself until then.',
  upright: ': only level slats have lines that go on. Take `upright` out, or fit this run for itself.',
  faces:
    ': one has slats on one face, the other on two, or by turns. Mount both alike, or fit this run for itself.',
  pattern: ': its boards are others. Fill both with the same pattern, or fit this run for itself.',
  ground: ' over ground that is not level with boards of several widths. Fit this run for itself.',
  none: ': none of them lies between its bottom and its height. Raise the height or lower the bottom.',
};
