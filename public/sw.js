// Keeps pages on the device. One cache an edition, filled before it is used, so that a half-finished
// update leaves the edition before it whole. The build puts the edition's hash in place of the word.
const EDITION = '__EDITION__';
const PREFIX = 'understudy-';
const NAME = `${PREFIX}${EDITION}`;
const BASE = new URL('./', self.location.href);
const AT_ONCE = 6;

const at = (path) => new URL(path, BASE).href;
const LISTS = at('offline/lists.json');
const BEFORE = at('offline/before');

/** The address that an answer is kept by: a query asks the same file. */
const keyOf = (address) => {
  const { origin, pathname } = new URL(address);
  return origin + pathname.replace(/\/index\.html$/, '/');
};

const isKeepable = (response) =>
  response.status === 200 && response.type === 'basic' && !response.redirected;

const hashOf = async (response) => {
  const digest = await crypto.subtle.digest('SHA-256', await response.clone().arrayBuffer());
  return [...new Uint8Array(digest.slice(0, 8))]
    .map((byte) => byte.toString(16).padStart(2, '0'))
    .join('');
};

const fetchWhole = async (address) => {
  const response = await fetch(address, { cache: 'no-cache' });
  if (!isKeepable(response)) throw new Error(`${address}: ${response.status}`);
  return response;
};

/** Fetches a file and keeps it if it is the one that this edition lists. */
const keep = async (cache, path, hash) => {
  const response = await fetchWhole(at(path));
  if ((await hashOf(response)) !== hash) throw new Error(`${path} is of another edition`);
  await cache.put(keyOf(at(path)), response);
};

const eachOf = async (items, work) => {
  const left = [...items];
  const worker = async () => {
    for (let item = left.shift(); item !== undefined; item = left.shift()) await work(item);
  };
  await Promise.all(Array.from({ length: AT_ONCE }, worker));
};

/** The list of the sections of this edition. */
const lists = async (cache) => {
  const kept = await cache.match(LISTS);
  if (kept) return kept.json();
  const response = await fetchWhole(LISTS);
  const found = await response.clone().json();
  // A site that is being replaced may serve this worker and another edition's list.
  if (found.edition !== EDITION) throw new Error('the lists are of another edition');
  await cache.put(LISTS, response);
  return found;
};

/** The files of a section with their hashes, from the cache or the network. */
const filesOf = async (cache, { name, hash }) => {
  const path = `offline/${name}.json`;
  if (!(await cache.match(at(path)))) await keep(cache, path, hash);
  return (await cache.match(at(path))).json();
};

/** The section of a path below the base; the build names them by the same rule. */
const sectionOf = (path) => {
  const names = path.split('/').slice(0, -1);
  return names.length === 0 ? 'top' : names.slice(0, names[0] === 'replace' ? 2 : 1).join('-');
};

/** Takes over from the caches of earlier editions what has not changed; fetches what has. */
const carryOver = async (cache, sections) => {
  const olds = (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== NAME);
  for (const name of olds) {
    const old = await caches.open(name);
    const before = await (await old.match(LISTS))?.json();
    if (before === undefined) continue;
    const paths = (await old.keys()).map(({ url }) => url.slice(BASE.href.length));
    const wanted = Map.groupBy(
      paths.filter((path) => !path.startsWith('offline/')),
      sectionOf,
    );
    for (const [sectionName, kept] of wanted) {
      const section = sections.find((one) => one.name === sectionName);
      const was = before.sections.find((one) => one.name === sectionName);
      if (section === undefined || was === undefined) continue;
      const files = await filesOf(cache, section);
      const oldFiles = (await (await old.match(at(`offline/${sectionName}.json`)))?.json()) ?? {};
      await eachOf(kept, async (path) => {
        if (files[path] === undefined || (await cache.match(at(path)))) return;
        const same = oldFiles[path] === files[path] && (await old.match(at(path)));
        if (same) await cache.put(at(path), same);
        else await keep(cache, path, files[path]);
      });
    }
  }
};

self.addEventListener('install', (event) => {
  event.waitUntil(
    (async () => {
      const cache = await caches.open(NAME);
      const { shell, sections } = await lists(cache);
      await eachOf(Object.entries(shell), async ([path, hash]) => {
        if (!(await cache.match(at(path)))) await keep(cache, path, hash);
      });
      await carryOver(cache, sections);
    })(),
  );
});

const earlierCaches = async () =>
  (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== NAME);

/** Pages that were open when this edition took over; they go on with the files that they were made for. */
const earlierPages = async () => {
  const cache = await caches.open(NAME);
  return (await (await cache.match(BEFORE))?.json()) ?? [];
};

const openPages = async () =>
  (await self.clients.matchAll({ includeUncontrolled: true, type: 'window' })).map(({ id }) => id);

/** Lets earlier editions go once no page of theirs is open. */
const dropEarlier = async () => {
  const [earlier, open] = [await earlierPages(), await openPages()];
  if (earlier.some((id) => open.includes(id))) return;
  await Promise.all((await earlierCaches()).map((name) => caches.delete(name)));
  await (await caches.open(NAME)).delete(BEFORE);
};

self.addEventListener('activate', (event) => {
  event.waitUntil(
    (async () => {
      const cache = await caches.open(NAME);
      const pages = (await earlierCaches()).length > 0 ? await openPages() : [];
      await cache.put(BEFORE, new Response(JSON.stringify(pages)));
      await self.clients.claim();
      await dropEarlier();
    })(),
  );
});

/** What a page of an earlier edition asks for, from what was kept for that. */
const answerEarlier = async (request, page) => {
  if (!(await earlierPages()).includes(page)) return undefined;
  for (const name of await earlierCaches()) {
    const kept = await (await caches.open(name)).match(keyOf(request.url));
    if (kept) return kept;
  }
  return undefined;
};

/** Keeps a page or file that was visited; what is not listed is not kept. */
const keepVisited = async (address) => {
  const path = keyOf(address).slice(BASE.href.length);
  if (!keyOf(address).startsWith(BASE.href)) return;
  const cache = await caches.open(NAME);
  if (await cache.match(at(path))) return;
  const { sections } = await lists(cache);
  const section = sections.find(({ name }) => name === sectionOf(path));
  const hash = section && (await filesOf(cache, section))[path];
  if (hash) await keep(cache, path, hash);
};

const answer = async (request, page) => {
  const earlier = request.mode !== 'navigate' && (await answerEarlier(request, page));
  if (earlier) return earlier;
  const cache = await caches.open(NAME);
  const kept = await cache.match(keyOf(request.url));
  if (kept) return kept;
  try {
    return await fetch(request);
  } catch (fault) {
    if (request.mode !== 'navigate') throw fault;
    const slashed = `${keyOf(request.url)}/`;
    if (await cache.match(slashed)) return Response.redirect(slashed);
    return (await cache.match(at('offline/'))) ?? Response.error();
  }
};

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || !request.url.startsWith(BASE.href)) return;
  event.respondWith(answer(request, event.clientId));
  if (request.mode === 'navigate') event.waitUntil(dropEarlier());
});

/** Keeps every file, telling how far it is. */
const keepAll = async (tell) => {
  const cache = await caches.open(NAME);
  const { sections, files: total } = await lists(cache);
  let done = 0;
  for (const section of sections) {
    const files = await filesOf(cache, section);
    await eachOf(Object.entries(files), async ([path, hash]) => {
      if (!(await cache.match(at(path)))) await keep(cache, path, hash);
      done += 1;
      if (done % 25 === 0) tell({ done, total });
    });
  }
  tell({ done, total, all: true });
};

/** Lets go of all pages and files but those that every page needs. */
const forgetPages = async (tell) => {
  const cache = await caches.open(NAME);
  const { shell } = await lists(cache);
  const needed = new Set([LISTS, BEFORE, ...Object.keys(shell).map(at)]);
  const kept = (await cache.keys()).filter(({ url }) => !needed.has(url));
  await Promise.all(kept.map((request) => cache.delete(request)));
  tell({ forgotten: kept.length });
};

self.addEventListener('message', (event) => {
  const { data, ports } = event;
  const tell = (message) => ports[0]?.postMessage(message);
  if (data.ask === 'take over') void self.skipWaiting();
  if (data.ask === 'keep') {
    const kept = data.addresses.map((address) => keepVisited(address));
    event.waitUntil(Promise.allSettled(kept).then(dropEarlier));
  }
  if (data.ask === 'keep all') {
    event.waitUntil(keepAll(tell).catch((fault) => tell({ fault: fault.message })));
  }
  if (data.ask === 'forget') event.waitUntil(forgetPages(tell));
});
