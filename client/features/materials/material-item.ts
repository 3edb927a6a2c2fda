import { ThemeIcon, TreeItem, TreeItemCollapsibleState } from 'vscode';
import type { Material, MaterialKind } from '../../../server/protocol.ts';

const ICONS: Readonly<Partial<Record<MaterialKind, string>>> = {
  boards: 'layers',
  hardware: 'tools',
  concrete: 'package',
  finish: 'paintcan',
  price: 'credit-card',
  trouble: 'warning',
};

/** Headings are unfolded at first, what stands under them is not, but for the boards' stock. */
const UNFOLDED: ReadonlySet<MaterialKind> = new Set(['boards', 'hardware', 'concrete', 'finish']);

/** A line as the workbench shows it. A click on a piece leads to where it is written. */
export function itemOf(
  { id, label, note, tip, kind, under, pieces, piece }: Material,
  uri: string,
): TreeItem {
  const holds = (under?.length ?? 0) > 0 || (pieces ?? 0) > 0;
  const state = UNFOLDED.has(kind) ? TreeItemCollapsibleState.Expanded : TreeItemCollapsibleState.Collapsed;
  const item = new TreeItem(label, holds ? state : TreeItemCollapsibleState.None);
  item.id = id;
  item.contextValue = kind;
  if (note !== undefined) item.description = note;
  item.tooltip = [
    `${label}${note === undefined ? '' : `: ${note}`}`,
    ...(tip === undefined ? [] : [tip]),
  ].join('\n');
  item.accessibilityInformation = { label: note === undefined ? label : `${label}, ${note}` };
  const icon = ICONS[kind];
  if (icon !== undefined) item.iconPath = new ThemeIcon(icon);
  if (piece !== undefined)
    item.command = { command: 'slatwright.showPieceSource', title: 'Show Source', arguments: [uri, piece] };
  return item;
}
