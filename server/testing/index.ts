/** The server's services without a connection, for tests of single features. */
export { type Opened, openTexts } from './open-texts.ts';
