// The can card: choose what is poured and where, or one bed's cans at the tap.

import { useParams } from '@solidjs/router';
import { Show } from 'solid-js';
import { titles } from '#words/en/app.ts';
import { Sheet } from '../app/sheet.tsx';
import { keepAwake } from '../app/wake.ts';
import { CanCard } from './card.tsx';
import { Choose } from './choose.tsx';
import { useCan } from './chosen.ts';
import { useScreen } from './screen-set.tsx';
import '../styles/can.css';

const SHEET = 4;

export function CanScreen() {
  keepAwake();
  const params = useParams<{ bed?: string }>();
  const can = useCan();
  const screen = useScreen();
  const words = can.words;
  return (
    <Sheet title={titles.can} aside={words().date(can.record.today(), can.record.today())} here="can" number={SHEET}>
      <div class="can-sheet" lang={words().language}>
        <Show when={params.bed} keyed fallback={<Choose can={can} />}>
          {(bed) => <CanCard can={can} bed={bed} screen={screen} />}
        </Show>
      </div>
    </Sheet>
  );
}
