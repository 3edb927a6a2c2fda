/**
 * The picture beside the text: one panel for a document, opened, restored, kept up to date, and linked
 * with the text both ways.
 *
 * Lives here: panels and what goes through them. Does not live here: drawing (webview/), the server's protocol on the wire.
 */
export { activatePreview } from './activate.ts';
