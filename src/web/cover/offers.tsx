// What a shop offers and what may be spent: a row an offer, as its label has it; every trouble stands at its field.

import { For } from 'solid-js';
import { EMPTY_OFFER, type LimitsTyped, type OfferTyped } from '#tasks/plot/cover-offers.ts';
import type { Troubles } from '#tasks/plot/form.ts';
import { coverSheet as words } from '#words/en/cover-sheet.ts';
import { CoverRows } from './rows.tsx';
import { CoverText } from './text.tsx';

interface OffersProps {
  readonly offers: readonly OfferTyped[];
  readonly limits: LimitsTyped;
  readonly troubles: Troubles;
  readonly limitTroubles: Troubles;
  readonly onOffers: (offers: readonly OfferTyped[]) => void;
  readonly onLimit: (field: keyof LimitsTyped, text: string) => void;
}

const LIMITS = ['money', 'minutes', 'bucketMinutes'] as const;
const TEXTS = ['name', 'n', 'p2o5', 'k2o', 'pack', 'price'] as const;

export function Offers(props: OffersProps) {
  return (
    <details class="fold">
      <summary>{words.limitsHeading}</summary>
      <p>{words.limitsLead}</p>
      <p class="note">{words.labelNote}</p>
      <For each={LIMITS}>
        {(field) => (
          <CoverText
            id={`cover-${field}`}
            label={words.limits[field]}
            value={props.limits[field]}
            trouble={props.limitTroubles.get(field)?.sentence}
            onText={(text) => props.onLimit(field, text)}
          />
        )}
      </For>
      <CoverRows rows={props.offers} empty={EMPTY_OFFER} more={words.more} onRows={props.onOffers}>
        {(i, row, change) => (
          <>
            <For each={TEXTS}>
              {(field) => (
                <CoverText
                  id={`offer-${i}-${field}`}
                  label={words.fields[field]}
                  value={row()[field]}
                  trouble={props.troubles.get(`${i}.${field}`)?.sentence}
                  onText={(text) => change({ [field]: text })}
                />
              )}
            </For>
            <div class="field">
              <label for={`offer-${i}-release`}>{words.fields.release}</label>
              <select
                id={`offer-${i}-release`}
                class="entry plain"
                value={row().release}
                onChange={(event) => change({ release: event.currentTarget.value as OfferTyped['release'] })}
              >
                <For each={words.releases}>{([value, text]) => <option value={value}>{text}</option>}</For>
              </select>
            </div>
          </>
        )}
      </CoverRows>
    </details>
  );
}
