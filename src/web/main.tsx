// The page: the whole app in the one element that is there for it.

import { ErrorBoundary } from 'solid-js';
import { render } from 'solid-js/web';
import { App } from './app/app.tsx';
import { ByView } from './app/boundary.tsx';
import { startOffline } from './app/offline.ts';

const place = document.getElementById('sheet');
if (place === null) throw new Error('index.html has no element "sheet"');
// What stands there says that the page did not load, and is true until now.
place.replaceChildren();
render(
  () => (
    <ErrorBoundary fallback={(error) => <ByView show={({ FailedOpening }) => <FailedOpening error={error} />} />}>
      <App />
    </ErrorBoundary>
  ),
  place,
);
startOffline();
