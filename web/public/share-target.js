// What the device's share sheet hands to the installed page: laid aside here, without a server, until the page has asked
// what to do with it. Part of the service worker.

const SHELF = "shared";
const HERE = new URL("./share", self.registration.scope);

self.addEventListener("fetch", (event) => {
  const { method, url } = event.request;
  if (method !== "POST" || new URL(url).pathname !== HERE.pathname) return;
  event.respondWith(laidAside(event.request));
});

async function laidAside(request) {
  const form = await request.formData();
  const shelf = await caches.open(SHELF);
  const text = ["text", "url"].map((name) => form.get(name)).filter((said) => typeof said === "string" && said.trim() !== "");
  const files = form.getAll("files").filter((file) => file instanceof File && file.size > 0);
  if (text.length > 0) files.push(new File([text.join("\n")], form.get("title") || "", { type: "text/plain" }));
  for (const [at, file] of files.entries()) {
    // Its name stands in its address: names of other languages have no place in a header.
    const address = new URL(`./shared/${Date.now()}-${at}/${encodeURIComponent(file.name)}`, self.registration.scope);
    await shelf.put(address, new Response(file, { headers: { "content-type": file.type } }));
  }
  return Response.redirect(new URL("./?shared", self.registration.scope), 303);
}
