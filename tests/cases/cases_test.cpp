// Whole runs of the command on small shops written to a temporary folder: what is reported, and the exit code.
#include "command/run.h"

#include <algorithm>
#include <doctest/doctest.h>
#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>
#include <string>
#include <unistd.h>
#include <vector>

namespace fs = std::filesystem;
using namespace benchlore;

namespace {

struct Answer {
  int code;
  std::string out, err;
};

// A folder that goes away with the test.
struct Bench {
  fs::path root =
      fs::temp_directory_path() / ("benchlore-cases-" + std::to_string(getpid()) + "-" + std::to_string(next()));
  Bench() { fs::create_directories(root); }
  ~Bench() { fs::remove_all(root); }
  static int next() {
    static int count = 0;
    return ++count;
  }
  void write(const std::string& path, const std::string& text) const {
    fs::create_directories((root / path).parent_path());
    std::ofstream(root / path, std::ios::binary) << text;
  }
  std::string path(const std::string& name) const { return (root / name).string(); }
};

Answer run_benchlore(std::vector<std::string> arguments) {
  arguments.insert(arguments.begin(), "benchlore");
  std::vector<char*> argv;
  for (std::string& argument : arguments) argv.push_back(argument.data());
  std::istringstream in;
  std::ostringstream out, err;
  Streams streams{in, out, err, false, false};
  const int code = run(static_cast<int>(argv.size()), argv.data(), streams);
  return {code, out.str(), err.str()};
}

const std::string schema = std::string(BENCHLORE_ROOT) + "/schema";
const std::string site = std::string(BENCHLORE_ROOT) + "/site";

std::string component(const std::string& ratings, const std::string& more = "") {
  return "---\nkind: component\nclass: rectifier-diode\ntitle: A diode\nratings:\n" + ratings + more + "---\nBody.\n";
}

Bench broken_shop() {
  Bench bench;
  bench.write("content/sound.md", "---\nkind: page\ntitle: Sound\n---\nA sound note, see [the other](other.md).\n");
  bench.write("content/other.md", "---\nkind: page\ntitle: Other\n---\n# A heading\n\nText.\n");
  bench.write("content/no-front.md", "No front matter here.\n");
  bench.write("content/bad-yaml.md", "---\nkind: page\ntitle: [open\n---\n");
  bench.write("content/anchor.md", "---\nkind: page\ntitle: &a x\n---\n");
  bench.write("content/bad-kind.md", "---\nkind: gadget\ntitle: x\n---\n");
  bench.write("content/bad-field.md", "---\nkind: page\ntitle: x\ncolour: red\n---\n");
  bench.write("content/no-title.md", "---\nkind: page\n---\n");
  bench.write("content/bad-class.md", "---\nkind: component\nclass: flux-valve\ntitle: x\n---\n");
  bench.write("content/bad-rating.md", component("  wobble: 3 V\n"));
  bench.write("content/bad-unit.md", component("  reverse-voltage: 50\n"));
  bench.write("content/comma.md", component("  reverse-voltage: 4,7 V\n"));
  bench.write("content/not-text.md", "---\nkind: page\ntitle: x\n---\n\xff\xfe\n");
  bench.write("content/broken-link.md", "---\nkind: page\ntitle: x\n---\n[gone](gone.md)\n");
  bench.write("content/case-link.md", "---\nkind: page\ntitle: x\n---\n[case](Other.md)\n");
  bench.write("content/anchor-link.md", "---\nkind: page\ntitle: x\n---\n[anchor](other.md#nowhere)\n");
  bench.write("content/outside.md", "---\nkind: page\ntitle: x\n---\n[out](../../etc/passwd)\n");
  bench.write("content/picture.md", "---\nkind: page\ntitle: x\n---\n![gone](gone.png)\n");
  bench.write("content/script.md", "---\nkind: page\ntitle: x\n---\n[run](javascript:alert(1))\n");
  bench.write("content/a/twin.md", "---\nkind: page\ntitle: x\n---\n");
  bench.write("content/b/twin.md", "---\nkind: page\ntitle: x\n---\n");
  bench.write("content/job.md", "---\nkind: job\ntitle: x\nequipment: no-such-machine\nreceived: 2024-05-01\n---\n");
  return bench;
}

const std::map<std::string, std::string> expected = {
    {"no-front.md", "front-matter-missing"},
    {"bad-yaml.md", "front-matter-syntax"},
    {"anchor.md", "front-matter-subset"},
    {"bad-kind.md", "unknown-kind"},
    {"bad-field.md", "unknown-field"},
    {"no-title.md", "missing-field"},
    {"bad-class.md", "unknown-class"},
    {"bad-rating.md", "unknown-rating"},
    {"bad-unit.md", "bad-quantity"},
    {"comma.md", "bad-quantity"},
    {"not-text.md", "unreadable-file"},
    {"broken-link.md", "broken-link"},
    {"case-link.md", "link-case"},
    {"anchor-link.md", "missing-anchor"},
    {"outside.md", "link-outside"},
    {"picture.md", "missing-image"},
    {"script.md", "unsafe-link"},
    {"b/twin.md", "duplicate-id"},
    {"job.md", "unresolved-reference"},
};

} // namespace

namespace {

// The rules of the findings whose main place is in the file; each finding begins with its rule, then its file.
std::vector<std::string> findings_of(const std::string& json, const std::string& file) {
  const std::string opening = "{\"rule\":\"";
  std::vector<std::string> rules;
  for (std::size_t at = json.find(opening); at != std::string::npos; at = json.find(opening, at + 1)) {
    const std::size_t name = at + opening.size();
    const std::size_t place = json.find("\"file\":\"", at);
    if (json.compare(place + 8, file.size() + 1, file + "\"") == 0)
      rules.push_back(json.substr(name, json.find('"', name) - name));
  }
  return rules;
}

} // namespace

TEST_CASE("check lists a broken file of each sort once, with its place, and exits 1") {
  const Bench bench = broken_shop();
  const Answer answer =
      run_benchlore({"check", "--content", bench.path("content"), "--schema", schema, "--format", "json"});
  CHECK(answer.code == 1);
  for (const auto& [file, kind] : expected) {
    CAPTURE(file);
    CHECK_MESSAGE(findings_of(answer.out, file) == std::vector<std::string>{kind}, answer.out);
  }
  CHECK(answer.out.find("sound.md") == std::string::npos);
}

TEST_CASE("each message of check stands with file, line and column in the text") {
  const Bench bench = broken_shop();
  const Answer answer = run_benchlore({"check", "--content", bench.path("content"), "--schema", schema});
  CHECK(answer.code == 1);
  CHECK(answer.out.find("comma.md:6:21") != std::string::npos);
  CHECK(answer.out.find("broken-link.md:5:") != std::string::npos);
}

TEST_CASE("build publishes the sound notes, marks the broken ones on the report page, and exits 1") {
  const Bench bench = broken_shop();
  const Answer answer = run_benchlore(
      {"build", "--content", bench.path("content"), "--schema", schema, "--site", site, "--out", bench.path("public")});
  CHECK(answer.code == 1);
  CHECK(fs::exists(bench.path("public/index.html")));
  CHECK(fs::exists(bench.path("public/notes/sound.html")));
  CHECK_FALSE(fs::exists(bench.path("public/notes/bad-unit.html")));
  std::ostringstream report;
  report << std::ifstream(bench.path("public/findings.html")).rdbuf();
  CHECK(report.str().find("bad-unit.md") != std::string::npos);
  CHECK(report.str().find("bad-yaml.md") != std::string::npos);
}

TEST_CASE("a missing content folder, a foreign output folder and an unreadable schema exit 2 with nothing written") {
  Bench bench;
  bench.write("content/a.md", "---\nkind: page\ntitle: A\n---\n");
  bench.write("mine/letter.txt", "dear");
  const Answer missing = run_benchlore(
      {"build", "--content", bench.path("none"), "--schema", schema, "--site", site, "--out", bench.path("public")});
  CHECK(missing.code == 2);
  CHECK(missing.err.find("none") != std::string::npos);
  const Answer foreign = run_benchlore(
      {"build", "--content", bench.path("content"), "--schema", schema, "--site", site, "--out", bench.path("mine")});
  CHECK(foreign.code == 2);
  const Answer unreadable = run_benchlore({"build", "--content", bench.path("content"), "--schema",
                                           bench.path("nowhere"), "--site", site, "--out", bench.path("public")});
  CHECK(unreadable.code == 2);
  std::vector<std::string> left;
  for (const auto& entry : fs::recursive_directory_iterator(bench.root)) {
    if (entry.is_regular_file()) left.push_back(entry.path().filename().string());
  }
  std::sort(left.begin(), left.end());
  CHECK(left == std::vector<std::string>{"a.md", "letter.txt"});
}

TEST_CASE("building twice replaces the output whole and leaves nothing beside it") {
  Bench bench;
  bench.write("content/first.md", "---\nkind: page\ntitle: First\n---\n");
  const std::vector<std::string> build = {"build", "--content", bench.path("content"), "--schema", schema, "--site",
                                          site,    "--out",     bench.path("public")};
  CHECK(run_benchlore(build).code == 0);
  fs::remove(bench.path("content/first.md"));
  bench.write("content/second.md", "---\nkind: page\ntitle: Second\n---\n");
  CHECK(run_benchlore(build).code == 0);
  CHECK_FALSE(fs::exists(bench.path("public/notes/first.html")));
  CHECK(fs::exists(bench.path("public/notes/second.html")));
  std::size_t entries = 0;
  for ([[maybe_unused]] const auto& entry : fs::directory_iterator(bench.root)) ++entries;
  CHECK(entries == 2);
}

TEST_CASE("judge answers 0 for usable, 1 for any other verdict, 2 for a name that is not there") {
  const std::string content = std::string(BENCHLORE_ROOT) + "/content";
  const Answer good = run_benchlore({"judge", "1N4001", "1N4007", "--content", content, "--schema", schema, "--role",
                                     "mains-rectifier", "--format", "json"});
  CHECK_MESSAGE(good.code == 0, good.out << good.err);
  CHECK(good.out.find("\"version\":1") != std::string::npos);
  const Answer worse = run_benchlore({"judge", "1N4007", "1N4001", "--content", content, "--schema", schema});
  CHECK(worse.code == 1);
  CHECK(worse.out.find("reverse-voltage") != std::string::npos);
  CHECK(run_benchlore({"judge", "1N4007", "no-such-part", "--content", content, "--schema", schema}).code == 2);
  CHECK(run_benchlore({"judge", "1N4007"}).code == 2);
  CHECK(run_benchlore({"juge"}).code == 2);
  CHECK(run_benchlore(
            {"judge", "1N4007", "1N4001", "--content", content, "--schema", schema, "--stress", "applied-voltage=12"})
            .code == 2);
}

TEST_CASE("a part is found by id, marking, alias and type number with or without hyphens") {
  const std::string content = std::string(BENCHLORE_ROOT) + "/content";
  for (const char* name : {"1N4007", "1n-4007", "1N 4007"}) {
    const Answer answer = run_benchlore(
        {"substitute", name, "--content", content, "--schema", schema, "--format", "json", "--limit", "3"});
    CAPTURE(name);
    CHECK_MESSAGE(answer.out.find("\"original\":\"1n4007\"") != std::string::npos, answer.out << answer.err);
  }
}

TEST_CASE("a marking is read, with a reason and the components that bear it") {
  const std::string content = std::string(BENCHLORE_ROOT) + "/content";
  const Answer json = run_benchlore({"decode", "104Z", "--content", content, "--schema", schema, "--format", "json"});
  CHECK_MESSAGE(json.code == 0, json.out << json.err);
  for (const char* piece : {"\"format\":\"benchlore-decode\"", "\"version\":1", "\"value\":1e-07", "\"unit\":\"F\"",
                            "\"tolerance\":{\"minus\":0.2,\"plus\":0.8}", "\"text\":\"capacitor, 100 nF -20/+80 %\"",
                            "\"why\":", "\"components\":[\"ceramic-100n-50v-z5u\"]"})
    CHECK_MESSAGE(json.out.find(piece) != std::string::npos, json.out);
  const Answer text = run_benchlore({"decode", "104Z", "--content", content, "--schema", schema});
  CHECK(text.out.starts_with("in this shop: ceramic-100n-50v-z5u"));
  CHECK(text.out.find("capacitor, 100 nF -20/+80 %\n") != std::string::npos);
}

TEST_CASE("a component that bears a marking is an answer though no code reads it") {
  const std::string content = std::string(BENCHLORE_ROOT) + "/content";
  const Answer answer = run_benchlore({"decode", "1N4007", "--content", content, "--schema", schema});
  CHECK(answer.code == 0);
  CHECK(answer.out == "in this shop: 1n4007  1N4007\n");
}

TEST_CASE("a marking needs no shop, and what cannot be read is told") {
  const Bench bench;
  const auto content = std::vector<std::string>{"--content", bench.path("nowhere"), "--schema", schema};
  CHECK(run_benchlore({"decode", "104", content[0], content[1], content[2], content[3]}).code == 2);
  bench.write("content/sound.md", "---\nkind: page\ntitle: Sound\n---\nText.\n");
  auto decode_here = [&](const std::string& marking) {
    return run_benchlore({"decode", marking, "--content", bench.path("content"), "--schema", schema});
  };
  CHECK(decode_here("yellow violet red gold").out.starts_with("resistor, 4.7 kΩ ±5 %\n"));
  const Answer nothing = decode_here("wob\x1b[31mble\xff");
  CHECK(nothing.code == 1);
  CHECK(nothing.out.empty());
  CHECK(nothing.err.find("no code reads") != std::string::npos);
  CHECK(nothing.err.find('\x1b') == std::string::npos);
  const Answer empty = decode_here(" ");
  CHECK(empty.code == 2);
  CHECK(empty.err.find("no marking") != std::string::npos);
  const Answer longer = decode_here(std::string(121, '1'));
  CHECK(longer.code == 2);
  CHECK(longer.err.find("121 bytes") != std::string::npos);
  CHECK(run_benchlore({"decode"}).code == 2);
}
