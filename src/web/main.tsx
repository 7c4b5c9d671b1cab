// The page: the whole app in the one element that is there for it.

import { render } from 'solid-js/web';
import { App } from './app/app.tsx';
import { startOffline } from './app/offline.ts';

const place = document.getElementById('sheet');
if (place === null) throw new Error('index.html has no element "sheet"');
render(() => <App />, place);
startOffline();
