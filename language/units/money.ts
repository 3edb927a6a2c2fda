/** An amount of money in whole minor units of its currency: cents, pence, or the unit itself where there is no smaller one. */
export interface Money {
  readonly minor: number;
  /** ISO 4217. */
  readonly currency: string;
}

const OF_SYMBOL: Readonly<Record<string, string>> = { $: 'USD', '€': 'EUR', '£': 'GBP', '¥': 'JPY' };

/** Currencies without a minor unit, or with another than a hundredth (ISO 4217, from memory). */
const DECIMALS: Readonly<Record<string, number>> = {
  JPY: 0,
  KRW: 0,
  ISK: 0,
  CLP: 0,
  VND: 0,
  KWD: 3,
  BHD: 3,
  JOD: 3,
  TND: 3,
};

export function minorDigits(currency: string): number {
  return DECIMALS[currency] ?? 2;
}

/** `$1,234.50` or `€9.80`; undefined when it is no money. `dollar` is what `$` stands for. */
export function parseMoney(text: string, dollar = 'USD'): Money | undefined {
  const match = /^([$€£¥])[ \t]?(\d+(?:,\d{3})*(?:\.\d+)?)$/.exec(text.trim());
  if (!match) return undefined;
  const [, symbol = '', digits = ''] = match;
  return moneyOf(digits.replaceAll(',', ''), symbol === '$' ? dollar : (OF_SYMBOL[symbol] ?? ''));
}

/** Digits with a point, and a currency; undefined when there are more decimals than it has. */
export function moneyOf(digits: string, currency: string): Money | undefined {
  const [whole = '', part = ''] = digits.split('.');
  const places = minorDigits(currency);
  if (!/^[A-Z]{3}$/.test(currency) || part.replace(/0+$/, '').length > places) return undefined;
  const minor = Number(whole + part.padEnd(places, '0').slice(0, places));
  return Number.isSafeInteger(minor) ? { minor, currency } : undefined;
}

/** `$1,234.50`, `€9.80`, `CHF 12.00`; a minus before it where it is less than nothing. */
export function formatMoney({ minor, currency }: Money): string {
  const places = minorDigits(currency);
  const digits = String(Math.abs(Math.round(minor))).padStart(places + 1, '0');
  const whole = digits.slice(0, digits.length - places).replace(/\B(?=(\d{3})+$)/g, ',');
  const part = places > 0 ? `.${digits.slice(digits.length - places)}` : '';
  const symbol = Object.entries(OF_SYMBOL).find(([, code]) => code === currency)?.[0];
  return `${minor < 0 ? '-' : ''}${symbol ?? `${currency} `}${whole}${part}`;
}
