import {
  cleanupOutdatedCaches,
  createHandlerBoundToURL,
  precacheAndRoute,
} from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';

declare const self: ServiceWorkerGlobalScope;

/*
 * Everything the app is made of is fetched once, under names that carry a hash of the content, and
 * answered from the phone from then on: the app opens in airplane mode at any of its addresses.
 */
precacheAndRoute(self.__WB_MANIFEST);
cleanupOutdatedCaches();
const page = createHandlerBoundToURL('index.html');
const home = new URL(self.registration.scope);

/*
 * The page asks for its parts by relative addresses: at one that is deeper it would be blank. So
 * every other address leads home, by a hash at which the app says that nothing is there.
 */
registerRoute(
  new NavigationRoute(async (options) =>
    [home.pathname, `${home.pathname}index.html`].includes(options.url.pathname)
      ? page(options)
      : Response.redirect(new URL('#/nowhere', home)),
  ),
);

/*
 * A file that the phone's share sheet hands to the app (see the manifest): it waits in a cache of its
 * own until the page has taken it out, and never leaves the phone. Only the last one waits.
 */
registerRoute(
  ({ url, sameOrigin }) => sameOrigin && url.pathname === `${home.pathname}take-in`,
  async ({ request }) => {
    const file = (await request.formData()).get('file');
    const cache = await caches.open('taken-in');
    if (file instanceof File) await cache.put('file', new Response(file));
    return Response.redirect(new URL('#/handover', home), 303);
  },
  'POST',
);

/*
 * The first version takes charge of the page that installed it, so that its lazy parts come from
 * the cache and not from a server that may hold a newer version by then. A later version waits
 * until a person takes it in: see app/device/worker.ts.
 */
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));
self.addEventListener('message', (event) => {
  // The browser may end a worker whose events are over, and would forget the wish with it.
  if (event.data?.type === 'SKIP_WAITING') event.waitUntil(self.skipWaiting());
});
