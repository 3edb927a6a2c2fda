/** As good as without end, in ticks: 100 m. */
export const FAR = 8e8;
