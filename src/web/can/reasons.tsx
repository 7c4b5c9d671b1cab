// Findings as the card shows them, in the words of the keyholder's language.

import type { Finding } from '#engine/rules/rule.ts';
import { spokenWith } from '#tasks/caution.ts';
import type { CanCardWords } from '#words/en/can-card.ts';
import { CautionList } from '../parts/caution-list.tsx';

export function Reasons(props: {
  readonly findings: readonly Finding[];
  readonly words: CanCardWords;
  /** In a fold of its own. */
  readonly apart?: boolean;
}) {
  const said = () => spokenWith(props.findings, props.words.cautions, props.words.instead);
  return <CautionList cautions={said()} words={props.words} apart={props.apart === true} quiet />;
}
