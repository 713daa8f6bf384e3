// What a host page hears: each event of each element, written down as text.
const told = document.querySelector("#told");

for (const element of document.querySelectorAll("straight-answer")) {
  for (const type of ["answer", "resize", "error"]) {
    element.addEventListener(type, ({ detail }) => {
      const line = document.createElement("li");
      line.dataset.from = element.id;
      line.dataset.type = type;
      line.textContent = `${element.id}: ${type} ${JSON.stringify(detail).slice(0, 400)}`;
      told.append(line);
    });
  }
}
