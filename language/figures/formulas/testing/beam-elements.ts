/**
 * A beam on simple supports by finite elements (two nodes, deflection and slope at each, cubic shapes), solved with
 * pivoting. Owes nothing to the formulas it checks.
 */
export function solveBeam(spans: readonly number[], load: number, stiffness: number, perSpan: number) {
  const sizes = spans.flatMap((span) => new Array<number>(perSpan).fill(span / perSpan));
  const nodes = sizes.length + 1;
  const matrix = Array.from({ length: 2 * nodes }, () => new Array<number>(2 * nodes).fill(0));
  const forces = new Array<number>(2 * nodes).fill(0);
  const shapes = sizes.map((l) => {
    const k = stiffness / l ** 3;
    return [
      [12 * k, 6 * k * l, -12 * k, 6 * k * l],
      [6 * k * l, 4 * k * l * l, -6 * k * l, 2 * k * l * l],
      [-12 * k, -6 * k * l, 12 * k, -6 * k * l],
      [6 * k * l, 2 * k * l * l, -6 * k * l, 4 * k * l * l],
    ];
  });
  const even = (l: number) => [l / 2, (l * l) / 12, l / 2, (-l * l) / 12].map((part) => part * load);
  sizes.forEach((l, e) => {
    for (let i = 0; i < 4; i++) {
      (forces[2 * e + i] as number) += even(l)[i] as number;
      for (let j = 0; j < 4; j++)
        ((matrix[2 * e + i] as number[])[2 * e + j] as number) += shapes[e]?.[i]?.[j] as number;
    }
  });
  const held = new Set(Array.from({ length: spans.length + 1 }, (_, s) => 2 * s * perSpan));
  for (const dof of held) {
    for (let j = 0; j < 2 * nodes; j++) (matrix[dof] as number[])[j] = (matrix[j] as number[])[dof] = 0;
    (matrix[dof] as number[])[dof] = 1;
    forces[dof] = 0;
  }
  const moved = solve(matrix, forces);
  const deflections = moved.filter((_, i) => i % 2 === 0);
  const endMoment = (e: number) => {
    const row = shapes[e]?.[3] as number[];
    const own = even(sizes[e] as number)[3] as number;
    return row.reduce((sum, k, i) => sum + k * (moved[2 * e + i] as number), 0) - own;
  };
  const supportMoments = [...held].map((dof) => {
    const node = dof / 2;
    if (node === 0 || node === nodes - 1) return 0;
    // The element's own sign is anticlockwise; hanging over a support is negative.
    return -endMoment(node - 1);
  });
  const deflection = deflections.reduce((worst, d) => (Math.abs(d) > Math.abs(worst) ? d : worst), 0);
  return { deflection, supportMoments };
}

function solve(matrix: number[][], right: number[]): number[] {
  const n = right.length;
  const a = matrix.map((row, i) => [...row, right[i] as number]);
  for (let c = 0; c < n; c++) {
    let best = c;
    for (let r = c + 1; r < n; r++) if (Math.abs(a[r]?.[c] ?? 0) > Math.abs(a[best]?.[c] ?? 0)) best = r;
    [a[c], a[best]] = [a[best] as number[], a[c] as number[]];
    for (let r = c + 1; r < n; r++) {
      const factor = (a[r]?.[c] ?? 0) / (a[c]?.[c] as number);
      if (factor === 0) continue;
      for (let j = c; j <= n; j++) ((a[r] as number[])[j] as number) -= factor * (a[c]?.[j] as number);
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let r = n - 1; r >= 0; r--) {
    let sum = a[r]?.[n] as number;
    for (let j = r + 1; j < n; j++) sum -= (a[r]?.[j] as number) * (x[j] as number);
    x[r] = sum / (a[r]?.[r] as number);
  }
  return x;
}
