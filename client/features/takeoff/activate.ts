import {
  commands,
  type Disposable,
  ProgressLocation,
  type TextDocument,
  Uri,
  ViewColumn,
  window,
  workspace,
} from 'vscode';
import type { TakeoffFiles } from '../../../server/protocol.ts';
import { askedDocument, DisposableStore, toldWhenItFails } from '../../infrastructure/index.ts';
import type { ReckoningSource } from '../language-client/index.ts';
import { SHEET_SCHEME, SheetFiles } from './sheet-files.ts';
import { takeoffPage } from './takeoff-page.ts';

/** Registers the sheets as documents that can be read, and the commands that open and save them. */
export function activateTakeoff(source: ReckoningSource): Disposable {
  const store = new DisposableStore();
  const files = store.add(new SheetFiles());
  store.add(workspace.registerTextDocumentContentProvider(SHEET_SCHEME, files));
  const withSheets =
    (show: (document: TextDocument, sheets: TakeoffFiles) => Promise<void>) => async (asked?: unknown) => {
      const document = await askedDocument(asked);
      const sheets = document && (await sheetsOf(document, source));
      if (sheets) await show(document, sheets);
    };
  store.add(
    commands.registerCommand(
      'slatwright.showTakeoff',
      withSheets(async (document, sheets) => {
        const page = files.put(document.uri, 'takeoff.md', takeoffPage(nameOf(document.uri), sheets));
        await commands.executeCommand('markdown.showPreview', page);
      }),
    ),
  );
  store.add(
    commands.registerCommand(
      'slatwright.openOrder',
      withSheets((document, { order }) => open(files.put(document.uri, 'order.csv', order))),
    ),
  );
  store.add(
    commands.registerCommand(
      'slatwright.openTicket',
      withSheets(async (document, { sheets }) => {
        const name = await window.showQuickPick(
          sheets.map((sheet) => sheet.name),
          { title: 'Tickets for the saw', placeHolder: 'Which sheet?' },
        );
        const sheet = sheets.find((one) => one.name === name);
        if (sheet) await open(files.put(document.uri, sheet.name, sheet.svg));
      }),
    ),
  );
  store.add(commands.registerCommand('slatwright.saveTakeoff', withSheets(save)));
  return store;
}

function sheetsOf(document: TextDocument, source: ReckoningSource): Promise<TakeoffFiles | undefined> {
  return toldWhenItFails('the takeoff', () =>
    window.withProgress(
      { location: ProgressLocation.Notification, title: 'Planning the cuts', cancellable: true },
      (_progress, token) => source.takeoffSheets(document.uri.toString(), token),
    ),
  );
}

async function open(uri: Uri): Promise<void> {
  await window.showTextDocument(uri, { viewColumn: ViewColumn.Active, preview: true });
}

/** The order and all sheets, as files of a folder that is asked for. */
async function save(document: TextDocument, { order, sheets }: TakeoffFiles): Promise<void> {
  const [folder] =
    (await window.showOpenDialog({
      title: 'Save the order and the sheets of the takeoff into',
      openLabel: 'Save Here',
      canSelectFiles: false,
      canSelectFolders: true,
      defaultUri: Uri.joinPath(document.uri, '..'),
    })) ?? [];
  if (!folder) return;
  const bytes = new TextEncoder();
  const written = [{ name: 'order.csv', svg: order }, ...sheets];
  for (const { name, svg } of written)
    await workspace.fs.writeFile(Uri.joinPath(folder, name), bytes.encode(svg));
  void window.showInformationMessage(`${written.length} files are in ${folder.fsPath}.`);
}

function nameOf(uri: Uri): string {
  return uri.path.slice(uri.path.lastIndexOf('/') + 1);
}
