/**
 * Speed, hop by hop: prints medians and p95 beside a baseline measured in the same run. Nothing here
 * is asserted: machines differ, and a number is for reading.
 *
 * `npm run bench` runs all of it; `npm run bench -- server` (or `webview`, `workbench`, `sizes`, `cutting`) a part.
 */
export * from './made-jobs.ts';
export * from './statistics.ts';
