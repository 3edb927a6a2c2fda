// Prints how well each way of ending statements recovers: `npx node tests/recovery/print-recovery.ts [stride]`.
import { measureRecovery, WAYS } from './measure-recovery.ts';
import { TEXTS } from './texts.ts';

const stride = Number(process.argv[2] ?? 1);
const percent = (share: number) => `${(share * 100).toFixed(2)} %`;
const rows = WAYS.flatMap((way) =>
  (['prefix', 'deletion'] as const).map((damage) =>
    measureRecovery(
      way,
      damage,
      TEXTS.map(({ text }) => text),
      stride,
    ),
  ),
);
console.table(
  rows.map(({ way, damage, cases, mean, worst, lossy }) => ({
    way,
    damage,
    cases,
    mean: percent(mean),
    worst: percent(worst),
    'cases with a loss': percent(lossy),
  })),
);
