// The page: hatches once, then the one sheet there is.

import { render } from 'solid-js/web';
import { Hatches } from './drawings/hatches.tsx';
import { WeighIn } from './weigh-in/weigh-in.tsx';

const place = document.getElementById('sheet');
if (place === null) throw new Error('index.html has no element "sheet"');
render(
  () => (
    <>
      <Hatches />
      <WeighIn />
    </>
  ),
  place,
);
