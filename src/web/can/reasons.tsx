// Findings as the card shows them: mark, word, sentence, source. Sentences are those of the keyholder's language.

import { For } from 'solid-js';
import type { Finding } from '#engine/rules/rule.ts';
import { citation } from '#engine/tables/index.ts';
import type { CanCardWords } from '#words/en/can-card.ts';
import { LevelMark } from '../parts/marks.tsx';

export function Reasons(props: { readonly findings: readonly Finding[]; readonly words: CanCardWords }) {
  return (
    <ul class="reasons">
      <For each={props.findings}>
        {(finding) => (
          <li>
            <LevelMark level={finding.level} />
            <div>
              <p>
                <b>{props.words.levels[finding.level]}.</b> {props.words.cautions[finding.rule]?.(finding.values)}
              </p>
              <p class="source">{citation(finding.source)}</p>
            </div>
          </li>
        )}
      </For>
    </ul>
  );
}
