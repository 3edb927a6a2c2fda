import { groundLine, highestGround, type Origin, type Problem, type RunSpec } from '../model/index.ts';
import { formatLength } from '../units/index.ts';
import type { Range } from './infill.ts';
import { capLabel, collarLabel, postLabel } from './labels.ts';
import type { RunLayout } from './layout.ts';
import { type About, type End, leaned, makePiece } from './make-piece.ts';
import type { Piece, Vec3 } from './piece.ts';
import { postDepth, type StandingPost } from './post-pieces.ts';
import type { PlacedBay } from './posts.ts';
import { geometryProblem } from './problems.ts';

interface Dressed {
  readonly pieces: readonly Piece[];
  readonly problems: readonly Problem[];
}

/** Caps and collars of the run's own posts; a post that another run makes is dressed there. */
export function dressPosts(
  spec: RunSpec,
  posts: readonly StandingPost[],
  bays: readonly PlacedBay[],
  reach: RunLayout['reach'],
): Dressed {
  const own = posts.filter(({ post }) => !post.corner?.borrowed);
  const stood = (piece: Piece, { post }: StandingPost) => (post.lean ? leaned(piece, post.lean) : piece);
  const pieces: Piece[] = own.flatMap((post) => capOf(spec, post) ?? []);
  const problems: Problem[] = [];
  for (const end of spec.collars?.ends ?? [])
    for (const post of own) {
      const made = collarOf(spec, post, end, bays, reach);
      pieces.push(...made.pieces.map((piece) => stood(piece, post)));
      // Said once for all posts: what makes room at one does so at the others.
      if (problems.length === 0) problems.push(...made.problems);
    }
  return { pieces, problems };
}

function about(
  spec: RunSpec,
  { post }: StandingPost,
  named: Pick<About, 'key' | 'label' | 'role' | 'side'>,
  from: readonly Origin[],
): About {
  const { key, gate } = post.mark;
  return { ...named, run: spec.name, gate, supports: [key], from: [...from, spec.origin] };
}

/** Level over the middle of its post's top: as wide as the post and its overhang, or of its own size. */
function capOf(spec: RunSpec, standing: StandingPost): Piece | undefined {
  if (!spec.caps) return undefined;
  const { value: cap, origin } = spec.caps;
  const { mark, lean } = standing.post;
  const leans = lean ? lean.slope * (standing.z[1] - lean.pivot[1]) : 0;
  const y = postDepth(spec, standing.post);
  const over = cap.overhang.value;
  const along = cap.along?.value ?? mark.to - mark.from + 2 * over;
  const through = cap.through?.value ?? y[1] - y[0] + 2 * over;
  const middle = (low: number, high: number, size: number) => low + Math.floor((high - low - size) / 2);
  return makePiece(
    about(
      spec,
      standing,
      { key: `${mark.key}/cap`, label: capLabel(postLabel(mark.number)), role: 'cap', side: 'middle' },
      [origin, cap.origin],
    ),
    {
      stock: cap.name,
      ripped: false,
      origin: [middle(mark.from, mark.to, along) + leans, middle(y[0], y[1], through), standing.z[1]],
      grain: [1, 0, 0],
      across: [0, 1, 0],
      through: [0, 0, 1],
      width: through,
      thickness: cap.thickness.value,
      ends: [{ at: 0 }, { at: along }],
      ...(cap.shape.value === 'hipped' ? { hip: { edge: cap.edge.value } } : {}),
    },
  );
}

/** Four boards that meet at 45 degrees over the post's corners, on the ground or level with the post's top. */
function collarOf(
  spec: RunSpec,
  standing: StandingPost,
  end: 'bottom' | 'top',
  bays: readonly PlacedBay[],
  reach: RunLayout['reach'],
): Dressed {
  const { collars } = spec;
  if (!collars) return { pieces: [], problems: [] };
  const { post } = standing;
  const { mark } = post;
  const { name, width, thickness } = collars.stock.value;
  const [wide, thick] = [width.value, thickness.value];
  const ground = highestGround(groundLine(spec), mark.from, mark.to);
  const z: Range = end === 'bottom' ? [ground, ground + wide] : [standing.z[1] - wide, standing.z[1]];
  const beside = bays
    .filter(({ left, right }) => left === post || right === post)
    .flatMap(({ bay }) => [reach.get(bay.number) ?? []].filter((range) => range.length === 2));
  const edges = beside.map((range) => range[end === 'bottom' ? 0 : 1] ?? 0);
  const room = end === 'bottom' ? Math.min(...edges) - ground : standing.z[1] - Math.max(...edges);
  if (room < wide) {
    const shown = (ticks: number) => formatLength(ticks, spec.measure);
    const args = { end, post: mark.number, room: shown(Math.max(0, room)), needs: shown(wide) };
    return { pieces: [], problems: [geometryProblem('collar-no-room', collars.origin, args)] };
  }
  const x: Range = [mark.from, mark.to];
  const y = postDepth(spec, post);
  const board = (
    side: 'front' | 'back' | 'left' | 'right',
    origin: Vec3,
    grain: Vec3,
    through: Vec3,
    ends: readonly [End, End],
  ): Piece =>
    makePiece(
      about(
        spec,
        standing,
        {
          key: `${mark.key}/collar-${end}-${side}`,
          label: collarLabel(postLabel(mark.number), end, side),
          role: 'collar',
          side: side === 'front' || side === 'back' ? side : 'middle',
        },
        [collars.origin, collars.stock.value.origin],
      ),
      {
        stock: name,
        ripped: false,
        origin,
        grain,
        across: [0, 0, -1],
        through,
        width: wide,
        thickness: thick,
        ends,
      },
    );
  // Thickness is measured toward the back and the right: near boards get shorter that way, far ones longer.
  const near = ([low, high]: Range): readonly [End, End] => [
    { at: low - thick, bevel: 1 },
    { at: high + thick, bevel: -1 },
  ];
  const far = ([low, high]: Range): readonly [End, End] => [
    { at: low, bevel: -1 },
    { at: high, bevel: 1 },
  ];
  const [along, back]: readonly [Vec3, Vec3] = [
    [1, 0, 0],
    [0, 1, 0],
  ];
  return {
    pieces: [
      board('front', [0, y[0] - thick, z[1]], along, back, near(x)),
      board('back', [0, y[1], z[1]], along, back, far(x)),
      board('left', [x[0] - thick, 0, z[1]], back, along, near(y)),
      board('right', [x[1], 0, z[1]], back, along, far(y)),
    ],
    problems: [],
  };
}
