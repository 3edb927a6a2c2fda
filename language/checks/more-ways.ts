/** How many ways out there are besides the one that is told: "2 more as quick fixes". */
export function moreWays(count: number): string {
  return `${count} more as ${count === 1 ? 'a quick fix' : 'quick fixes'}`;
}
