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
import { askedDocument, DisposableStore, fileNameOf, toldWhenItFails } from '../../infrastructure/index.ts';
import type { ReckoningSource } from '../language-client/index.ts';
import { mayReplace } from './may-replace.ts';
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
        const page = files.put(document.uri, {
          name: 'takeoff.md',
          text: takeoffPage(fileNameOf(document.uri), sheets),
        });
        await commands.executeCommand('markdown.showPreview', page);
      }),
    ),
  );
  store.add(
    commands.registerCommand(
      'slatwright.openOrder',
      withSheets((document, { csv }) => open(files.put(document.uri, csv))),
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
        if (sheet) await open(files.put(document.uri, sheet));
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
async function save(document: TextDocument, { csv, sheets }: TakeoffFiles): Promise<void> {
  const [folder] =
    (await window.showOpenDialog({
      title: 'Save the order and the sheets of the takeoff into',
      openLabel: 'Save Here',
      canSelectFiles: false,
      canSelectFolders: true,
      defaultUri: Uri.joinPath(document.uri, '..'),
    })) ?? [];
  if (!folder) return;
  const files = [csv, ...sheets];
  if (!(await mayReplace(folder, files))) return;
  const bytes = new TextEncoder();
  for (const { name, text } of files)
    await workspace.fs.writeFile(Uri.joinPath(folder, name), bytes.encode(text));
  void window.showInformationMessage(`${files.length} files are in ${folder.fsPath}.`);
}
