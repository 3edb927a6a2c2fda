/** Codes are words joined by hyphens: nothing that could leave the folder of pages. */
const CODE = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;

export function isFindingCode(value: unknown): value is string {
  return typeof value === 'string' && CODE.test(value);
}

/** The code a page's path or file name stands for, if it is one. */
export function codeOf(path: string): string | undefined {
  const name = path.replace(/^\//, '').replace(/\.md$/, '');
  return isFindingCode(name) ? name : undefined;
}
