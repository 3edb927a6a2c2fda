/**
 * What a takeoff is written down as: the order as a table, tickets for the saw and labels.
 *
 * Lives here: what stands on each sheet, for the command line and the editor alike. Does not live here: how a sheet
 * is drawn (drawing/), where it is written to.
 */
export { asCsv } from './csv.ts';
export { cutWords } from './cut-words.ts';
export { fileNameOf } from './file-name.ts';
export { grooveOf } from './groove-words.ts';
export { orderRows } from './order-rows.ts';
export { settingSheets } from './setting-sheets.ts';
export { settingsWords } from './settings-words.ts';
export { ticketsOf } from './tickets.ts';
export { whyNoPlan } from './why-no-plan.ts';
