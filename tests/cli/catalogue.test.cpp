#include <catch2/catch.hpp>

#include "run.hpp"

using namespace gritwright::cli;

TEST_CASE("catalogue list names all 21 reference materials, each figure with kind and source", "[cli][catalogue]") {
  const Answer answer = run({"catalogue", "list", "--json"});
  REQUIRE(answer.exit == Exit::done);
  const auto materials = answer.json()["materials"];
  CHECK(materials.size() == 21);
  for (const auto& material : materials) {
    INFO(material["name"]);
    CHECK(material["figures"].size() >= 1);
    for (const auto& figure : material["figures"]) {
      CHECK_FALSE(figure["source"].get<std::string>().empty());
      CHECK((figure["kind"] == "measured" || figure["kind"] == "derived" || figure["kind"] == "typical"));
    }
  }
}

TEST_CASE("catalogue show takes any spelling and names the nearest where there is none", "[cli][catalogue][refuses]") {
  CHECK(run({"catalogue", "show", "Pine-Bark"}).exit == Exit::done);
  const Answer answer = run({"catalogue", "show", "pumce"});
  CHECK(answer.exit == Exit::input_refused);
  CHECK(answer.err.find("pumice") != std::string::npos);
  CHECK(run({"catalogue", "show"}).exit == Exit::wrong_usage);
}

TEST_CASE("The shipped catalogue passes its own check", "[cli][catalogue]") { CHECK(run({"catalogue", "check"}).exit == Exit::done); }

TEST_CASE("list and check take no name", "[cli][catalogue][refuses]") {
  CHECK(run({"catalogue", "list", "foo"}).exit == Exit::wrong_usage);
  CHECK(run({"catalogue", "check", "x"}).exit == Exit::wrong_usage);
}

TEST_CASE("catalogue show tells basis, the range's own source, remarks, and cites every source it names", "[cli][catalogue]") {
  const auto list = run({"catalogue", "list", "--json"}).json();
  for (const auto& material : list["materials"]) {
    const std::string name = material["name"];
    INFO(name);
    const auto json = run({"catalogue", "show", name, "--json"}).json();
    const std::string text = run({"catalogue", "show", name}).out;
    for (const auto& figure : json["figures"]) {
      for (const char* key : {"range_kind", "range_source", "basis", "remark"}) CHECK(figure.contains(key));
      CHECK(text.find("\n" + figure["source"].get<std::string>() + ": ") != std::string::npos);
      if (!figure["remark"].is_null()) CHECK(text.find(figure["remark"].get<std::string>()) != std::string::npos);
      if (!figure["range_source"].is_null()) CHECK(text.find("\n" + figure["range_source"].get<std::string>() + ": ") != std::string::npos);
    }
    CHECK(json["sources"].size() >= 1);
  }
}
