import { isMetric, type Job } from '../../language/model/index.ts';
import { type BoardPlan, keptFrom, orderOf, type Price, type Takeoff } from '../../language/takeoff/index.ts';
import { formatLength, formatMoney, type Ticks } from '../../language/units/index.ts';
import { cutWords, settingsWords } from '../sheets/index.ts';

/** What to buy, how to cut it, what is bought besides, and what it costs, line by line. */
export function takeoffAsText(found: Takeoff, job: Job): string[] {
  const measure = job.measure.value;
  const metric = isMetric(measure);
  const length = (ticks: number) => formatLength(ticks, measure);
  const lines = [`Takeoff${job.name === undefined ? '' : ` of ${job.name}`}`, '', 'To buy'];
  for (const one of orderOf(found.plans, job, metric)) {
    const again = one.temporary ? ' (temporary, can be used again)' : '';
    const spare = one.spare > 0 ? ` and ${one.spare} spare` : '';
    const run = metric ? `${round(one.run)} m` : `${round(one.run)} ft`;
    const volume = metric ? `${round(one.volume, 3)} m³` : `${round(one.volume)} board ft`;
    lines.push(
      `  ${one.needed}${spare} x ${one.stock}, ${length(one.section[0])} x ${length(one.section[1])}, ${length(one.length)}: ${run}, ${volume}${again}`,
    );
  }
  for (const plan of found.plans) {
    if (plan.boards.length === 0) continue;
    lines.push('', headOf(plan));
    for (const [text, times] of alike(plan, job)) lines.push(`  ${times} x ${text}`);
  }
  const kept = keptOffcuts(found, job);
  if (kept.size > 0) {
    lines.push('', `To keep, from ${length(keptFrom(job))} on`);
    for (const [text, count] of kept) lines.push(`  ${count} x ${text}`);
  }
  if (found.items.length > 0) {
    lines.push('', 'Besides');
    for (const { what, count, unit, rule } of found.items)
      lines.push(`  ${round(count)} ${unit === '' ? '' : `${unit} `}${what} (${rule})`);
  }
  if (found.price) lines.push('', ...priceText(found.price, job));
  return lines;
}

/** Offcuts worth keeping, strips among them. */
function keptOffcuts({ plans }: Takeoff, job: Job): ReadonlyMap<string, number> {
  const kept = new Map<string, number>();
  const length = (ticks: Ticks) => formatLength(Math.floor(ticks), job.measure.value);
  for (const { boards, keptFrom: least } of plans)
    for (const { stock, width, offcut, parts } of boards) {
      const strips = parts.flatMap((part) => part.strips);
      for (const one of [{ width, offcut }, ...strips]) {
        if (one.offcut < least) continue;
        const text = `${stock}${one.width < width ? ` ripped to ${length(one.width)}` : ''}, ${length(one.offcut)}`;
        kept.set(text, (kept.get(text) ?? 0) + 1);
      }
    }
  return kept;
}

function headOf(plan: BoardPlan): string {
  const { demands, bought, waste, aim } = plan;
  const counts = demands.map(
    ({ stock, count, temporary }, at) =>
      `${count} ${temporary ? 'temporary ' : ''}${at === 0 ? 'pieces ' : ''}of ${stock.name}`,
  );
  const ripped = demands.some(({ stock }) => stock.name !== bought.name) ? `, from ${bought.name}` : '';
  const proof = aim === 'settings' ? settingsWords([plan]) : proofWords(plan);
  return `${counts.join(', ')}${ripped}: ${round(100 * waste)} % waste, ${proof}`;
}

function proofWords({ proven, cost, bound }: BoardPlan): string {
  if (proven) return `proven ${bound ? 'cheapest' : 'least length'}`;
  const gap =
    cost && bound ? `; may be ${formatMoney({ ...cost, minor: cost.minor - bound.minor })} too dear` : '';
  return `not proven${gap}`;
}

/** Boards cut alike, once with how often. */
function alike({ boards, bought, keptFrom }: BoardPlan, job: Job): ReadonlyMap<string, number> {
  const length = (ticks: Ticks) => formatLength(Math.floor(ticks), job.measure.value);
  const found = new Map<string, number>();
  for (const board of boards) {
    const name = board.stock === bought.name ? '' : `${board.stock} `;
    const { onHand } = board;
    const whence = onHand ? ` ${onHand.usable ? `of ${length(onHand.length)} ` : ''}on hand` : '';
    const from = `${name}${length(board.length)}${whence}`;
    const kept = board.offcut >= keptFrom ? ', keep it' : '';
    const text = `${from}: ${cutWords(board, length).join(', ')}; left ${length(board.offcut)}${kept}`;
    found.set(text, (found.get(text) ?? 0) + 1);
  }
  return found;
}

function priceText(price: Price, job: Job): string[] {
  const money = (minor: number) => formatMoney({ minor, currency: price.currency });
  const lines = price.lines.map(({ group, what, count, unit, minor, lacks }) => {
    const size =
      group === 'boards'
        ? ` ${formatLength(Number(unit), job.measure.value)}`
        : unit === ''
          ? ''
          : ` ${unit}`;
    return `  ${what}: ${round(count)}${group === 'boards' ? ' x' : ''}${size}: ${minor === undefined ? `no ${lacks} is given` : money(minor)}`;
  });
  const { quote } = job;
  const percent = (share: { readonly value: number } | undefined) => `${round(100 * (share?.value ?? 0))} %`;
  return [
    'Price',
    ...lines,
    `  material ${money(price.material)}, labor ${money(price.labor)} (${round(price.minutes / 60)} hours)`,
    ...(quote.overhead ? [`  overhead ${percent(quote.overhead)}: ${money(price.overhead)}`] : []),
    ...(quote.margin
      ? [`  margin ${percent(quote.margin)} of what is asked: ${money(price.profit)}`]
      : quote.markup
        ? [`  markup ${percent(quote.markup)} on cost: ${money(price.profit)}`]
        : []),
    `  net ${money(price.net)}${quote.tax ? `, tax ${percent(quote.tax)} ${money(price.tax)}, total ${money(price.gross)}` : ''}`,
    ...(price.deposit === undefined
      ? []
      : [`  deposit ${money(price.deposit)}; caps on deposits differ by place`]),
    ...(price.whole ? [] : ['  Lines without a price are not in the sum.']),
  ];
}

const round = (value: number, digits = 1): number => Math.round(value * 10 ** digits) / 10 ** digits;
