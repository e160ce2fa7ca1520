// Tables that can be sorted by any column and narrowed by words; without scripts they stay in the order of the page.
(function () {
  "use strict";
  const orderOf = (row, column) => {
    const cell = row.cells[column];
    return cell && cell.dataset.order !== undefined ? Number(cell.dataset.order) : cell ? cell.textContent.trim() : "";
  };

  // Numbers by size, words by alphabet, empty cells last whichever way.
  function compare(a, b, sign) {
    if (a === b) return 0;
    if (a === "") return 1;
    if (b === "") return -1;
    if (typeof a === "number" && typeof b === "number") return sign * (a - b);
    return sign * String(a).localeCompare(String(b), undefined, { numeric: true });
  }

  function sort(table, header, column) {
    const upwards = header.getAttribute("aria-sort") !== "ascending";
    for (const other of table.tHead.rows[0].cells) other.removeAttribute("aria-sort");
    header.setAttribute("aria-sort", upwards ? "ascending" : "descending");
    const rows = [...table.tBodies[0].rows].map((row) => [orderOf(row, column), row]);
    rows.sort((a, b) => compare(a[0], b[0], upwards ? 1 : -1));
    table.tBodies[0].append(...rows.map((pair) => pair[1]));
  }

  function makeSortable(table) {
    [...table.tHead.rows[0].cells].forEach((header, column) => {
      const button = document.createElement("button");
      button.type = "button";
      button.textContent = header.textContent;
      header.replaceChildren(button);
      button.addEventListener("click", () => sort(table, header, column));
    });
  }

  function makeNarrowable(table, number) {
    const box = document.createElement("input");
    const label = document.createElement("label");
    box.type = "search";
    box.id = "narrow_" + number;
    label.htmlFor = box.id;
    label.textContent = "Show rows with";
    label.className = "narrow";
    table.closest(".wide").before(label, box);
    box.addEventListener("input", () => {
      const wanted = box.value.toLowerCase().split(/\s+/);
      for (const row of table.tBodies[0].rows) {
        const text = row.textContent.toLowerCase();
        row.hidden = !wanted.every((word) => text.includes(word));
      }
    });
  }

  document.querySelectorAll("table.sortable").forEach((table, number) => {
    makeSortable(table);
    if (table.tBodies[0].rows.length > 12) makeNarrowable(table, number);
  });
})();
