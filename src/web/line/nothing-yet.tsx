// An empty plot: what will stand here, and the act that starts it.

import { A } from '@solidjs/router';
import { beginning } from '#words/en/app.ts';
import { useDemo } from '../app/demo.ts';

export function NothingYet() {
  const demo = useDemo();
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
        <button type="button" class="block" onClick={() => demo.open()}>
          {beginning.demo}
        </button>
      </div>
      <p>{beginning.demoNote}</p>
    </section>
  );
}
