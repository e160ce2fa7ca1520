// Writes the index in batches, each into a small database, and compacts them into one in the order of the notes' ids.
#include "emit/index/index.h"

#include "emit/index/document.h"

#include <algorithm>
#include <atomic>
#include <filesystem>
#include <mutex>
#include <stdexcept>
#include <thread>

namespace benchlore {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t most_parts = 100; // each keeps half a dozen files open while they are compacted

std::vector<NoteId> sound_notes(const Shop& shop) {
  std::vector<NoteId> notes;
  notes.reserve(shop.by_id.size());
  for (const auto& [id, note] : shop.by_id) notes.push_back(note);
  return notes;
}

// What an update needs to see that it has the same notes before it; the order of ids fixes the numbers.
std::string fingerprint(const Shop& shop) {
  std::uint64_t hash = 1469598103934665603ull;
  for (const auto& [id, note] : shop.by_id) {
    for (const char c : id) hash = (hash ^ static_cast<unsigned char>(c)) * 1099511628211ull;
    hash = (hash ^ 10) * 1099511628211ull;
  }
  return std::to_string(shop.by_id.size()) + " " + std::to_string(hash);
}

void write_metadata(Xapian::WritableDatabase& database, const TermSource& source) {
  database.set_metadata("format", std::string(index_format));
  database.set_metadata("notes", fingerprint(source.shop));
  database.set_metadata("ratings", to_metadata(source.slots));
  if (source.shop.schema) database.set_metadata("synonyms", to_metadata(synonym_groups(*source.shop.schema)));
}

class IndexWriter {
public:
  IndexWriter(const Shop& shop, const JudgedShop& judged, fs::path folder, const IndexOptions& options)
      : source_(shop, judged), notes_(sound_notes(shop)), parts_(folder.string() + ".parts"),
        new_(folder.string() + ".new"), folder_(std::move(folder)), threads_(std::max(options.threads, 1u)),
        batch_(std::max({options.batch, std::size_t{1}, (notes_.size() + most_parts - 1) / most_parts})) {}

  void write() {
    clear();
    fs::create_directories(parts_);
    std::vector<std::jthread> others;
    for (unsigned i = 1; i < std::min<std::size_t>(threads_, parts()); ++i) others.emplace_back([this] { work(); });
    work();
    others.clear();
    if (!fault_.empty()) throw std::runtime_error(fault_);
    compact();
    fs::remove_all(folder_);
    fs::rename(new_, folder_);
    clear();
  }

  void clear() {
    fs::remove_all(parts_);
    fs::remove_all(new_);
  }

private:
  std::size_t parts() const { return std::max<std::size_t>((notes_.size() + batch_ - 1) / batch_, 1); }
  std::string part(std::size_t number) const { return (parts_ / std::to_string(number)).string(); }

  void work() {
    try {
      for (std::size_t number = next_++; number < parts(); number = next_++) write_part(number);
    } catch (const Xapian::Error& error) {
      failed(error.get_description());
    } catch (const std::exception& error) {
      failed(error.what());
    }
  }

  void failed(const std::string& what) {
    const std::lock_guard lock(mutex_);
    if (fault_.empty()) fault_ = what;
    next_ = parts();
  }

  void write_part(std::size_t number) {
    Xapian::WritableDatabase database(part(number), Xapian::DB_CREATE_OR_OVERWRITE | Xapian::DB_NO_SYNC);
    if (number == 0) write_metadata(database, source_);
    SpellingCounts spellings;
    const std::size_t end = std::min(notes_.size(), (number + 1) * batch_);
    for (std::size_t i = number * batch_; i < end; ++i)
      database.add_document(make_document(source_, notes_[i], spellings));
    for (const auto& [word, count] : spellings) database.add_spelling(word, count);
    database.commit();
  }

  void compact() {
    Xapian::Database all;
    for (std::size_t number = 0; number < parts(); ++number) all.add_database(Xapian::Database(part(number)));
    all.compact(new_.string());
  }

  TermSource source_;
  std::vector<NoteId> notes_;
  fs::path parts_, new_, folder_;
  unsigned threads_;
  std::size_t batch_;
  std::atomic<std::size_t> next_ = 0;
  std::mutex mutex_;
  std::string fault_;
};

template <class Work> bool guarded(std::string& error, const std::string& what, Work work) {
  try {
    work();
    return true;
  } catch (const Xapian::Error& fault) {
    error = what + ": " + fault.get_msg();
  } catch (const std::exception& fault) {
    error = what + ": " + fault.what();
  }
  return false;
}

} // namespace

bool write_index(const Shop& shop, const JudgedShop& judged, const std::string& folder, const IndexOptions& options,
                 std::string& error) {
  return guarded(error, "the index was not written", [&] {
    IndexWriter writer(shop, judged, folder, options);
    writer.write();
  });
}

bool update_index(const Shop& shop, const JudgedShop& judged, const std::string& folder,
                  const std::vector<NoteId>& changed, std::string& error) {
  return guarded(error, "the index was not changed", [&] {
    Xapian::WritableDatabase database(folder, Xapian::DB_OPEN | Xapian::DB_NO_SYNC);
    const TermSource source(shop, judged);
    if (database.get_metadata("format") != index_format || database.get_metadata("notes") != fingerprint(shop) ||
        database.get_metadata("ratings") != to_metadata(source.slots))
      throw Xapian::InvalidOperationError("it was written from other notes or another schema");
    SpellingCounts spellings;
    for (const NoteId note : changed)
      database.replace_document(id_term(shop.note(note).id), make_document(source, note, spellings));
    write_metadata(database, source);
    database.commit();
  });
}

} // namespace benchlore
