/** Opens a room from elsewhere on the page, and leads there: eyes, keyboard and voice alike. */
export function openRoom(id: string): void {
  const room = document.getElementById(id);
  const row = room?.querySelector("details");
  if (!room || !row) return;
  row.open = true;
  room.scrollIntoView({ block: "start" });
  room.querySelector<HTMLElement>("h2")?.focus({ preventScroll: true });
}
