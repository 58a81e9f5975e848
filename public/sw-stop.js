// The way out: served in place of sw.js it drops all that was kept and takes the worker away.
self.addEventListener('install', () => void self.skipWaiting());
self.addEventListener('activate', (event) => {
  event.waitUntil(
    (async () => {
      const names = await caches.keys();
      const own = `understudy-${new URL('./', self.location.href).pathname}-`;
      const kept = names.filter((name) => name.startsWith(own));
      await Promise.all(kept.map((name) => caches.delete(name)));
      await self.registration.unregister();
    })(),
  );
});
