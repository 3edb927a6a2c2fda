/** Looks of the workbench that the extension is shown in. */
export type Theme = 'light' | 'dark' | 'high-contrast-dark' | 'high-contrast-light';

/** The workbench's own name of each look: the value of `workbench.colorTheme`. */
export const THEME_NAMES: Readonly<Record<Theme, string>> = {
  light: 'Light Modern',
  dark: 'Dark Modern',
  'high-contrast-dark': 'Default High Contrast',
  'high-contrast-light': 'Default High Contrast Light',
};

/** The same looks as the list of themes shows them. */
export const THEME_LABELS: Readonly<Record<Theme, string>> = {
  light: 'Light Modern',
  dark: 'Dark Modern',
  'high-contrast-dark': 'Dark High Contrast',
  'high-contrast-light': 'Light High Contrast',
};

/** Settings by their full name, as in settings.json. */
export type Settings = Readonly<Record<string, unknown>>;

/** A workbench that asks nothing, fetches nothing and shows nothing beside what it is opened for. */
export const QUIET_SETTINGS: Settings = {
  'chat.disableAIFeatures': true,
  'editor.minimap.enabled': false,
  'editor.accessibilitySupport': 'off',
  'extensions.autoCheckUpdates': false,
  'extensions.autoUpdate': 'off',
  'extensions.ignoreRecommendations': true,
  'extensions.webWorker': false,
  'files.autoSave': 'off',
  'files.hotExit': 'off',
  'git.enabled': false,
  'security.workspace.trust.enabled': false,
  'telemetry.telemetryLevel': 'off',
  'update.mode': 'none',
  'window.autoDetectColorScheme': false,
  'workbench.enableExperiments': false,
  'workbench.reduceMotion': 'on',
  'workbench.secondarySideBar.defaultVisibility': 'hidden',
  'workbench.startupEditor': 'none',
  'workbench.tips.enabled': false,
};

/** For tests that type: what is typed is what the file holds, and only the language itself completes. */
export const PLAIN_TYPING_SETTINGS: Settings = {
  'editor.autoClosingBrackets': 'never',
  'editor.autoClosingQuotes': 'never',
  'editor.autoIndent': 'none',
  'editor.acceptSuggestionOnCommitCharacter': false,
  'editor.acceptSuggestionOnEnter': 'off',
  'editor.wordBasedSuggestions': 'off',
  'editor.cursorBlinking': 'solid',
};
