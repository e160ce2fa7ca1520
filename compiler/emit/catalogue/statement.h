// SQLite with owners: a database that closes itself and statements that bind what they are given. Faults are thrown as
// std::runtime_error; `write_catalogue` catches them.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <sqlite3.h>
#include <stdexcept>
#include <string>
#include <string_view>

namespace benchlore {

class Database {
public:
  explicit Database(const std::string& path) {
    sqlite3* opened = nullptr;
    const int result = sqlite3_open_v2(path.c_str(), &opened, SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE, nullptr);
    handle_.reset(opened);
    if (result != SQLITE_OK) fail();
  }

  void run(const std::string& sql) {
    if (sqlite3_exec(get(), sql.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK) fail();
  }

  sqlite3* get() const { return handle_.get(); }
  [[noreturn]] void fail() const { throw std::runtime_error(handle_ ? sqlite3_errmsg(get()) : "out of memory"); }

private:
  struct Close {
    void operator()(sqlite3* handle) const { sqlite3_close_v2(handle); }
  };
  std::unique_ptr<sqlite3, Close> handle_;
};

class Statement {
public:
  Statement(const Database& database, std::string_view sql, const char** tail = nullptr) : database_(database) {
    sqlite3_stmt* prepared = nullptr;
    const int length = static_cast<int>(sql.size());
    if (sqlite3_prepare_v2(database.get(), sql.data(), length, &prepared, tail) != SQLITE_OK) database.fail();
    handle_.reset(prepared);
  }

  // Nothing but blanks and comments.
  bool empty() const { return !handle_; }

  // Binds the values in their order and runs the statement; the texts need live only as long as the call.
  template <class... Values> void run(const Values&... values) {
    int number = 0;
    (bind(++number, values), ...);
    while (step()) {
    }
    sqlite3_reset(handle_.get());
  }

  // True while there is a row.
  bool step() {
    const int result = sqlite3_step(handle_.get());
    if (result != SQLITE_ROW && result != SQLITE_DONE) database_.fail();
    return result == SQLITE_ROW;
  }

  sqlite3_stmt* get() const { return handle_.get(); }
  std::string text(int column) const {
    const auto* bytes = reinterpret_cast<const char*>(sqlite3_column_text(handle_.get(), column));
    return bytes ? bytes : "";
  }

private:
  void check(int result) {
    if (result != SQLITE_OK) database_.fail();
  }
  void bind(int number, std::string_view text) {
    check(sqlite3_bind_text64(handle_.get(), number, text.data() ? text.data() : "", text.size(), SQLITE_STATIC,
                              SQLITE_UTF8));
  }
  void bind(int number, const std::string& text) { bind(number, std::string_view(text)); }
  void bind(int number, double value) { check(sqlite3_bind_double(handle_.get(), number, value)); }
  void bind(int number, std::int64_t value) { check(sqlite3_bind_int64(handle_.get(), number, value)); }
  void bind(int number, std::uint32_t value) { bind(number, static_cast<std::int64_t>(value)); }
  void bind(int number, int value) { bind(number, static_cast<std::int64_t>(value)); }
  void bind(int number, std::nullptr_t) { check(sqlite3_bind_null(handle_.get(), number)); }
  template <class T> void bind(int number, const std::optional<T>& value) {
    if (value)
      bind(number, *value);
    else
      bind(number, nullptr);
  }

  struct Finish {
    void operator()(sqlite3_stmt* handle) const { sqlite3_finalize(handle); }
  };
  const Database& database_;
  std::unique_ptr<sqlite3_stmt, Finish> handle_;
};

} // namespace benchlore
