import { DefaultValueConverter, type GrammarAST, type ValueType } from 'langium';
import { unquote } from './names.ts';

/**
 * Text to values. Lengths and numbers stay as written (units/ reads them where they are used, and can
 * say what is wrong with them); names and quoted texts lose their quotes. Never throws: an exception
 * here would leave the file without a tree.
 */
export class SlatValueConverter extends DefaultValueConverter {
  protected override runConverter(rule: GrammarAST.AbstractRule, input: string): ValueType {
    return rule.name === 'STRING' ? unquote(input) : input;
  }
}
