/** Where a published value comes from, and how sure we are of it. */
export interface Published {
  readonly source: string;
  readonly section: string;
  /** Seen in the text itself or an official reprint; in a second source that quotes it; in neither. */
  readonly confirmed: 'primary' | 'secondary' | 'from memory';
}

/** One value of a table that stands for itself. */
export interface PublishedValue extends Published {
  readonly value: number;
  /** What it is measured in; empty for a factor. */
  readonly unit: string;
}

export const primary = (source: string, section: string): Published => ({
  source,
  section,
  confirmed: 'primary',
});

export const secondary = (source: string, section: string): Published => ({
  source,
  section,
  confirmed: 'secondary',
});

export const fromMemory = (source: string, section: string): Published => ({
  source,
  section,
  confirmed: 'from memory',
});

/** A value with its source. */
export function valued(value: number, unit: string, published: Published): PublishedValue {
  return { value, unit, ...published };
}
