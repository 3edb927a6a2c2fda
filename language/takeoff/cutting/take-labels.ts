/** The labels of so many pieces of a size that are not taken yet. */
export type TakeLabels = (size: number, count: number) => readonly string[];

/** @param labels of all pieces, by size; they stay as they are */
export function takeLabels(labels: readonly (readonly string[])[]): TakeLabels {
  const taken = labels.map(() => 0);
  return (size, count) => {
    const from = taken[size] as number;
    taken[size] = from + count;
    return (labels[size] as readonly string[]).slice(from, from + count);
  };
}
