/** Variables an editor gives its webviews, for four kinds of theme. */
const LIGHT = {
  'editor-background': '#ffffff',
  'editor-foreground': '#3b3b3b',
  descriptionForeground: '#6b6b6b',
  'icon-foreground': '#3b3b3b',
  focusBorder: '#1764b5',
  'charts-orange': '#b5651d',
  'editorWarning-foreground': '#a8730a',
  'editorHoverWidget-background': '#f5f5f5',
  'editorHoverWidget-foreground': '#3b3b3b',
  'editorHoverWidget-border': '#cfcfcf',
  'toolbar-hoverBackground': '#e4e4e4',
  'textCodeBlock-background': '#f1f1f1',
};

const DARK: typeof LIGHT = {
  'editor-background': '#1f1f1f',
  'editor-foreground': '#cccccc',
  descriptionForeground: '#9d9d9d',
  'icon-foreground': '#cccccc',
  focusBorder: '#3794d6',
  'charts-orange': '#d18616',
  'editorWarning-foreground': '#cca700',
  'editorHoverWidget-background': '#252526',
  'editorHoverWidget-foreground': '#cccccc',
  'editorHoverWidget-border': '#454545',
  'toolbar-hoverBackground': '#3a3a3a',
  'textCodeBlock-background': '#2b2b2b',
};

const CONTRAST = {
  ...DARK,
  'editor-background': '#000000',
  'editor-foreground': '#ffffff',
  descriptionForeground: '#ffffff',
  focusBorder: '#f38518',
  contrastBorder: '#6fc3df',
  contrastActiveBorder: '#f38518',
  'editorWarning-foreground': '#ffd370',
};

const CONTRAST_LIGHT = {
  ...LIGHT,
  'editor-foreground': '#292929',
  focusBorder: '#0f4a85',
  contrastBorder: '#0f4a85',
  contrastActiveBorder: '#0f4a85',
  'editorWarning-foreground': '#895503',
};

/** By the class an editor puts on the body. */
export const THEMES: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'vscode-light': LIGHT,
  'vscode-dark': DARK,
  'vscode-high-contrast': CONTRAST,
  'vscode-high-contrast-light': CONTRAST_LIGHT,
};

export function useTheme(name: string): void {
  const { classList } = document.body;
  classList.remove(...Object.keys(THEMES));
  classList.add(name);
  const { style } = document.documentElement;
  style.cssText = '';
  for (const [key, value] of Object.entries(THEMES[name] ?? {})) style.setProperty(`--vscode-${key}`, value);
  style.setProperty('--vscode-font-family', 'system-ui, sans-serif');
}
