using ShopClass.Data.Orders;
using ShopClass.Print.Labels;

namespace ShopClass.Web.Tests.Printing;

public class LabelSheetTests
{
    // The store checks names of label sheets without knowing what they measure.
    [Fact]
    public void The_store_and_the_print_room_know_the_same_label_sheets() =>
        Assert.Equal(LabelSheet.All.Select(s => s.Id), LabelSetting.SheetIds);
}
