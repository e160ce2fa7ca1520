// The published noise margins and fan-outs between logic families, worked out from schema/logic-families.yaml. Sources
// stand beside the pairs of the table.
#include "support.h"
#include "verdict_cases.h"
#include "workings/logic.h"

using namespace benchlore;

namespace {

double number(const Family& family, const std::string& rating, bool greatest) {
  const auto found = family.ratings.find(rating);
  REQUIRE_MESSAGE(found != family.ratings.end(), family.name << " has no " << rating);
  const Quantity& quantity = std::get<Quantity>(found->second.value);
  const auto side = greatest ? quantity.high() : quantity.low();
  const auto other = greatest ? quantity.low() : quantity.high();
  REQUIRE((side || other));
  return side ? *side : *other;
}

std::optional<double> stated(const Node& pair, std::string_view key, Dimension dimension) {
  const Node* node = pair.find(key);
  if (node == nullptr) return std::nullopt;
  const auto result = parse_quantity(node->text, dimension);
  REQUIRE_MESSAGE(result.quantity.has_value(), node->text);
  return result.quantity->nominal->value();
}

void check_pair(const Schema& schema, const Node& pair) {
  const std::string driver_name = test::word_of(pair, "driver"), load_name = test::word_of(pair, "load");
  CAPTURE(driver_name);
  CAPTURE(load_name);
  REQUIRE(schema.families.contains(driver_name));
  REQUIRE(schema.families.contains(load_name));
  CHECK_FALSE(test::word_of(pair, "source").empty());
  const Family& driver = schema.families.at(driver_name);
  const Family& load = schema.families.at(load_name);
  if (const auto high = stated(pair, "high", dimension::voltage)) {
    const double margin =
        high_noise_margin({number(driver, "output-high-voltage", false)}, {number(load, "input-high-voltage", true)})
            .si;
    CHECK(margin == doctest::Approx(*high).epsilon(1e-9).scale(1));
  }
  if (const auto low = stated(pair, "low", dimension::voltage)) {
    const double margin =
        low_noise_margin({number(load, "input-low-voltage", false)}, {number(driver, "output-low-voltage", true)}).si;
    CHECK(margin == doctest::Approx(*low).epsilon(1e-9).scale(1));
  }
  if (const auto count = stated(pair, "fan-out", dimension::none)) {
    const std::int64_t low =
        fan_out({number(driver, "output-low-current", false)}, {number(load, "input-low-current", true)});
    const std::int64_t high =
        fan_out({number(driver, "output-high-current", false)}, {number(load, "input-high-current", true)});
    CHECK(static_cast<double>(std::min(low, high)) == *count);
  }
}

} // namespace

TEST_CASE("noise margins and fan-outs between families are the published ones") {
  const auto files = disk_files(std::string(BENCHLORE_ROOT) + "/tests/tables");
  Sources sources;
  Report report;
  const std::string text = files->read("logic-matrix.yaml").value_or("");
  const FileId file = sources.add("logic-matrix.yaml", text);
  const auto node =
      read_record(sources, {file, 0, static_cast<std::uint32_t>(text.size())}, report, {.bytes = 1 << 20});
  for (const Message& message : report.messages()) FAIL_CHECK(message.text);
  const Node* pairs = node ? node->find("pairs") : nullptr;
  REQUIRE(pairs != nullptr);
  CHECK(pairs->items.size() >= 40);
  for (const Node& pair : pairs->items) check_pair(test::project_schema(), pair);
}
