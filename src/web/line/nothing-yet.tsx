// An empty plot: what will stand here, and the act that starts it.

import { A } from '@solidjs/router';
import { beginning } from '#words/en/app.ts';
import { DemoOffer } from '../parts/demo-offer.tsx';

export function NothingYet() {
  return (
    <section class="nothing-yet">
      <p>{beginning.empty}</p>
      <div class="begin">
        <A class="block act" href="/plot">
          {beginning.begin}
        </A>
        <A class="block" href="/weigh-in">
          {beginning.weigh}
        </A>
        <DemoOffer />
      </div>
      <p>{beginning.demoNote}</p>
    </section>
  );
}
